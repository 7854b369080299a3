import type { IWorksheetData } from '@univerjs/core';
import { type Grid, openBook } from '../grid.ts';

/** The sheet in front, which only a grid on a screen draws. */
interface Screen {
  readonly getSheetId: () => string;
  readonly refreshCanvas?: () => unknown;
}

/**
 * Adds a sheet behind the others; with formulas it comes with its cells, otherwise the returned function puts them in. The
 * grid copies and searches whatever it is handed as a new sheet, and searches all that stands beside it, which takes seconds
 * for tens of thousands of rows.
 */
export function addSheet(grid: Grid, data: Partial<IWorksheetData>, formulas: boolean): () => void {
  const book = openBook(grid);
  const stored = book.getWorkbook();
  const { cellData = {} } = data;
  // The grid keeps this very object for Redo.
  const sheet = formulas ? data : { ...data, cellData: {} as typeof cellData };
  const params = { unitId: book.getId(), index: stored.getSheets().length, sheet };
  grid.api.syncExecuteCommand('sheet.command.insert-sheet', params);
  if (formulas) return () => undefined;
  return () => {
    sheet.cellData = cellData;
    const cells = stored.getSheetBySheetId(data.id ?? '')?.getCellMatrix();
    for (const row of Object.keys(cellData).map(Number)) cells?.setRow(row, cellData[row] ?? {});
    const front: Screen = book.getActiveSheet();
    front.refreshCanvas?.();
  };
}
