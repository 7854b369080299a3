import type { Sheet, Workbook } from '../../../cells/sheet.ts';
import { baseName } from './fileName.ts';
import { openBook, type ReadOptions } from './openBook.ts';
import { SheetCells } from './sheetCells.ts';

export type { ReadOptions } from './openBook.ts';

/**
 * Reads a workbook of the .xlsx family for an audit. Numbers keep full precision, dates and percentages are told by
 * their number formats, formulas read as their stored results. Throws FileRefused as `openBook` does, and where a sheet
 * cannot be read in full.
 */
export function readWorkbook(fileName: string, bytes: Uint8Array, options: ReadOptions = {}): Workbook {
  const { book, readSheet } = openBook(bytes, options);
  const sheets = book.sheets.map((entry): Sheet => {
    const cells = new SheetCells();
    const tables = readSheet(entry, cells);
    const { name, hidden } = entry;
    return { name, hidden, tables, ...cells.finish() };
  });
  return { name: baseName(fileName), sheets };
}
