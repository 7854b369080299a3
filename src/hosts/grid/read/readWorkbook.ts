import { BooleanNumber, type ICellData, type Workbook as StoredBook, type Worksheet } from '@univerjs/core';
import type { Cell } from '../../../cells/cell.ts';
import type { Area, Sheet, Workbook } from '../../../cells/sheet.ts';
import { applyMerges } from '../../formats/merges.ts';
import { type Cancel, HostRefused, type OnProgress } from '../../port/port.ts';
import { type Grid, shownContent, storedBook, styleOf } from '../grid.ts';
import { pause } from '../pause.ts';
import { plainTextOf, tablesOf } from '../tables.ts';
import { cellReader } from './cell.ts';

const rowsBetweenPauses = 2_000;

/** Reads every sheet that holds something, in slices, so that the page answers meanwhile. */
export async function readWorkbook(grid: Grid, onProgress?: OnProgress, cancel?: Cancel): Promise<Workbook> {
  const book = storedBook(grid);
  const stored = book.getSheets();
  const total = stored.reduce((sum, sheet) => sum + lastRow(sheet) + 1, 0);
  let done = 0;
  const onRow = async (): Promise<void> => {
    if (done++ % rowsBetweenPauses === 0) {
      if (cancel?.cancelled === true)
        throw new HostRefused('Reading was cancelled. The workbook is as it was.');
      onProgress?.(Math.min(1, done / Math.max(1, total)));
      await pause();
    }
  };
  const sheets: Sheet[] = [];
  for (const sheet of stored) {
    const rows = await rowsOf(grid, book, sheet, onRow);
    if (rows.length > 0) sheets.push(sheetOf(sheet, rows));
  }
  onProgress?.(1);
  return { name: book.name, sheets };
}

function sheetOf(sheet: Worksheet, rows: (readonly Cell[])[]): Sheet {
  const merged = sheet.getConfig().mergeData.map(areaOf);
  const widest = Math.max(0, ...merged.map(({ right }) => right), widthOf(rows));
  const hiddenColumns = hiddenColumnsOf(sheet, widest);
  applyMerges(rows, merged, () => undefined);
  return {
    name: sheet.getName(),
    hidden: sheet.isSheetHidden() === BooleanNumber.TRUE,
    rows,
    hiddenRows: hiddenRowsOf(sheet, rows.length),
    tables: tablesOf(sheet),
    ...(merged.length > 0 ? { merged } : {}),
    ...(hiddenColumns.size > 0 ? { hiddenColumns } : {}),
    ...plainTextOf(sheet),
  };
}

async function rowsOf(
  grid: Grid,
  book: StoredBook,
  sheet: Worksheet,
  onRow: () => Promise<void>,
): Promise<(readonly Cell[])[]> {
  const cellOf = cellReader((cell: ICellData) => styleOf(book, cell)?.n?.pattern);
  const matrix = sheet.getCellMatrix();
  const spilled = grid.spilled(sheet.getUnitId(), sheet.getSheetId());
  const contentAt = shownContent(grid, sheet);
  const last = Math.max(lastRow(sheet), ...Object.keys(spilled).map(Number));
  const rows: (readonly Cell[])[] = [];
  for (let index = 0; index <= last; index++) {
    await onRow();
    const stored = matrix.getRow(index) ?? {};
    const row: Cell[] = [];
    for (const key of Object.keys({ ...stored, ...spilled[index] })) {
      const column = Number(key);
      const cell = cellOf(contentAt(index, column));
      if (cell === null) continue;
      while (row.length < column) row.push(null);
      row[column] = cell;
    }
    rows.push(row);
  }
  while (rows.at(-1)?.length === 0) rows.pop();
  return rows;
}

/** Index of the last row that is stored, −1 where none is. */
function lastRow(sheet: Worksheet): number {
  return sheet.getCellMatrix().getLength() - 1;
}

function hiddenRowsOf(sheet: Worksheet, rowCount: number): Set<number> {
  const hidden = new Set<number>();
  for (let index = 0; index < rowCount; index++) if (!sheet.getRowVisible(index)) hidden.add(index + 1);
  return hidden;
}

function widthOf(rows: readonly (readonly Cell[])[]): number {
  let widest = 0;
  for (const { length } of rows) widest = Math.max(widest, length);
  return widest;
}

function hiddenColumnsOf(sheet: Worksheet, columnCount: number): Set<number> {
  const hidden = new Set<number>();
  for (let index = 0; index < columnCount; index++) if (!sheet.getColVisible(index)) hidden.add(index + 1);
  return hidden;
}

/** An area of the grid, which counts from 0, as the sheet shows it. */
export function areaOf(range: {
  readonly startRow: number;
  readonly startColumn: number;
  readonly endRow: number;
  readonly endColumn: number;
}): Area {
  return {
    top: range.startRow + 1,
    left: range.startColumn + 1,
    bottom: range.endRow + 1,
    right: range.endColumn + 1,
  };
}
