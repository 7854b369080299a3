import type { Sheet, Workbook } from '../../../cells/sheet.ts';
import { openZip } from '../zip/archive.ts';
import { defaultLimits, type ReadLimits } from '../zip/limits.ts';
import { cellBudget } from './cellBudget.ts';
import { refuseOpenDocument, refuseUnlessZip } from './container.ts';
import { baseName } from './fileName.ts';
import { interner } from './intern.ts';
import { applyMerges } from '../../formats/merges.ts';
import { readSharedStrings } from './sharedStrings.ts';
import { SheetPart } from './sheetPart.ts';
import { readNumberStyles } from './styles.ts';
import { readTables } from './tables.ts';
import { readWorkbookPart } from './workbookPart.ts';
import { readXml } from './xml.ts';

export interface ReadOptions {
  readonly limits?: Partial<ReadLimits>;
  /** Hears how much is done, from 0 to 1, several times a sheet. What it throws ends the reading. */
  readonly onProgress?: (fraction: number) => void;
}

/**
 * Reads a workbook of the .xlsx family (transitional or strict OOXML, with or without macros) from its bytes;
 * what it is shows in its content, not its name. Numbers keep full precision, dates and percentages are told by
 * their number formats, formulas read as their stored results. Macros and links out of the file are never
 * followed. Throws FileRefused for everything that cannot be read in full.
 */
export function readWorkbook(fileName: string, bytes: Uint8Array, options: ReadOptions = {}): Workbook {
  refuseUnlessZip(bytes);
  const limits = { ...defaultLimits, ...options.limits };
  const archive = openZip(bytes, limits);
  refuseOpenDocument(archive);
  const book = readWorkbookPart(archive, limits);
  const total = [book.sharedStrings, ...book.sheets.map((sheet) => sheet.part)].reduce(
    (sum, part) => sum + (part?.size ?? 0),
    0,
  );
  let done = 0;
  const onBytes = (count: number): void => {
    done += count;
    options.onProgress?.(Math.min(1, done / total));
  };

  const intern = interner();
  const context = {
    sharedStrings:
      book.sharedStrings === undefined
        ? []
        : readSharedStrings(archive, book.sharedStrings, limits, intern, onBytes),
    date1904: book.date1904,
    intern,
  };
  const spend = cellBudget(limits.cells);
  const numberStyles = book.styles === undefined ? [] : readNumberStyles(archive, book.styles, limits);
  const sheets = book.sheets.map(({ name, hidden, part }): Sheet => {
    const sheet = new SheetPart(name, numberStyles, context, limits.textLength, spend);
    readXml(archive, part, limits, sheet, onBytes);
    const rows = sheet.finish();
    applyMerges(rows, sheet.merges, spend);
    return {
      name,
      hidden,
      rows,
      hiddenRows: sheet.hiddenRows,
      tables: readTables(archive, part, limits),
      ...(sheet.merges.length > 0 ? { merged: sheet.merges } : {}),
      ...(sheet.hiddenColumns.size > 0 ? { hiddenColumns: sheet.hiddenColumns } : {}),
      ...shownTextsOf(sheet),
    };
  });
  return { name: baseName(fileName), sheets };
}

function shownTextsOf(sheet: SheetPart): Pick<Sheet, 'shownTexts'> {
  const shownTexts = sheet.shown.finish();
  return shownTexts.length > 0 ? { shownTexts } : {};
}
