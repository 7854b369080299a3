import { baseName } from '../read/fileName.ts';
import { openBook, type ReadOptions } from '../read/openBook.ts';
import { readBookPart } from './bookPart.ts';
import { SheetRows } from './sheetRows.ts';
import { readLooks } from './styles.ts';
import { readTheme } from './theme.ts';
import type { SheetView, WorkbookView } from './types.ts';

/**
 * A workbook of the .xlsx family as a grid shows it: values as they are stored, formulas as people type them, looks.
 * `readWorkbook` is what the audit takes; the reader beneath both is one, so they accept and refuse the same files. Nothing
 * is calculated. Throws FileRefused for everything that cannot be read in full.
 */
export function viewWorkbook(fileName: string, bytes: Uint8Array, options: ReadOptions = {}): WorkbookView {
  const { archive, limits, book, readSheet } = openBook(bytes, options);
  const theme = readTheme(archive, book.theme, limits);
  const looks = readLooks(archive, book.styles, theme, limits);
  const sheets = book.sheets.map((entry): SheetView => {
    const kept = new SheetRows(looks, book.date1904);
    const tables = readSheet(entry, kept);
    const { columns, merges, frozen, showGridLines, defaultColumnWidth, defaultRowHeight } = kept.frame;
    const rules = kept.rules();
    return {
      name: entry.name,
      hidden: entry.hidden,
      rows: kept.rows(),
      columns,
      defaultColumnWidth,
      defaultRowHeight,
      merges,
      frozen,
      showGridLines,
      ...(rules.length > 0 ? { rules } : {}),
      tables,
    };
  });
  const front = readBookPart(archive, book.part, book.sheets, limits);
  return { name: baseName(fileName), sheets, ...front, styles: looks.styles, date1904: book.date1904 };
}
