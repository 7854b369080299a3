import { cellBudget } from '../read/cellBudget.ts';
import { refuseOpenDocument, refuseUnlessZip } from '../read/container.ts';
import { baseName } from '../read/fileName.ts';
import { interner } from '../read/intern.ts';
import { readSharedStrings } from '../read/sharedStrings.ts';
import { readTables } from '../read/tables.ts';
import { readWorkbookPart } from '../read/workbookPart.ts';
import { readXml } from '../read/xml.ts';
import { openZip } from '../zip/archive.ts';
import { defaultLimits, type ReadLimits } from '../zip/limits.ts';
import { readBookPart } from './bookPart.ts';
import { readLooks } from './styles.ts';
import { readTheme } from './theme.ts';
import type { SheetView, WorkbookView } from './types.ts';
import { ViewPart } from './viewPart.ts';

/**
 * A workbook of the .xlsx family as a grid shows it: values as they are stored, formulas as people type them, looks.
 * `readWorkbook` is what the audit takes; both read and refuse the same files. Nothing is calculated, macros and links
 * out of the file are never followed. Throws FileRefused for everything that cannot be read in full.
 */
export function viewWorkbook(
  fileName: string,
  bytes: Uint8Array,
  options: { readonly limits?: Partial<ReadLimits> } = {},
): WorkbookView {
  refuseUnlessZip(bytes);
  const limits = { ...defaultLimits, ...options.limits };
  const archive = openZip(bytes, limits);
  refuseOpenDocument(archive);
  const book = readWorkbookPart(archive, limits);
  const intern = interner();
  const context = {
    sharedStrings:
      book.sharedStrings === undefined ? [] : readSharedStrings(archive, book.sharedStrings, limits, intern),
    date1904: book.date1904,
    intern,
  };
  const theme = readTheme(archive, book.theme, limits);
  const looks = readLooks(archive, book.styles, theme, limits);
  const spend = cellBudget(limits.cells);
  const sheets = book.sheets.map(({ name, hidden, part }): SheetView => {
    const sheet = new ViewPart(name, context, looks, limits.textLength, spend);
    readXml(archive, part, limits, sheet);
    const { columns, merges, frozen, showGridLines, defaultColumnWidth, defaultRowHeight } = sheet.frame;
    const rules = sheet.rules();
    return {
      name,
      hidden,
      rows: sheet.rows(),
      columns,
      defaultColumnWidth,
      defaultRowHeight,
      merges,
      frozen,
      showGridLines,
      ...(rules.length > 0 ? { rules } : {}),
      tables: readTables(archive, part, limits),
    };
  });
  const front = readBookPart(archive, book.part, book.sheets, limits);
  return { name: baseName(fileName), sheets, ...front, styles: looks.styles, date1904: book.date1904 };
}
