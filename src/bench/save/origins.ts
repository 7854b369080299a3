import type { BooleanNumber, Worksheet } from '@univerjs/core';
import type { SheetView } from '../../hosts/file/view/types.ts';
import { type Grid, storedBook } from '../../hosts/grid/grid.ts';
import { sheetId } from '../open/gridWorkbook.ts';
import type { OpenedFile } from '../open/openFile.ts';

/** Where a row or column stood in the file, from 1, with its height or width in pixels and whether it was hidden. */
export interface Origin {
  readonly place: number;
  readonly size?: number | undefined;
  readonly hidden?: BooleanNumber | undefined;
}

type Marked = Record<number, { custom?: unknown } | undefined>;

/**
 * Marks the rows and columns of the file's sheets with where they stand in it. The grid takes the marks along wherever it
 * moves rows and columns, and Undo brings them back.
 */
export function markOrigins(grid: Grid, { view, added }: OpenedFile): void {
  for (const [index, sheet] of view.sheets.entries()) {
    const stored = storedBook(grid).getSheetBySheetId(sheetId(index));
    if (!stored || added.has(index)) continue;
    const { rowData, columnData } = stored.getConfig();
    // The last ones are marked too: they tell whether some before them went that hold nothing.
    const rows = new Set([...Object.keys(rowData).map(Number), ...sheet.rows.map(({ row }) => row - 1)]);
    rows.add(stored.getRowCount() - 1);
    for (const row of rows) {
      const known = rowData[row];
      const origin: Origin = { place: row + 1, size: known?.h, hidden: known?.hd };
      (rowData as Marked)[row] = { ...known, custom: { origin } };
    }
    const columns = new Set([...Object.keys(columnData).map(Number), stored.getColumnCount() - 1]);
    for (let column = 0; column < lastColumn(sheet); column++) columns.add(column);
    for (const column of columns) {
      const known = columnData[column];
      const origin: Origin = { place: column + 1, size: known?.w, hidden: known?.hd };
      (columnData as Marked)[column] = { ...known, custom: { origin } };
    }
  }
}

/** The mark of a row or column; `undefined` where it has none: it stood empty in the file, or not at all. */
export function originOf(marked: { readonly custom?: unknown } | null | undefined): Origin | undefined {
  return (marked?.custom as { readonly origin?: Origin } | undefined)?.origin;
}

/** Rows of a sheet that the grid says something of, from 0, with their marks. */
export function markedRows(sheet: Worksheet): [row: number, data: NonNullable<ReturnType<typeof rowAt>>][] {
  return Object.keys(sheet.getConfig().rowData).flatMap((key) => {
    const data = rowAt(sheet, Number(key));
    return data ? [[Number(key), data]] : [];
  });
}

/** Columns of a sheet that the grid says something of, from 0, with their marks. */
export function markedColumns(
  sheet: Worksheet,
): [column: number, data: NonNullable<ReturnType<typeof columnAt>>][] {
  return Object.keys(sheet.getConfig().columnData).flatMap((key) => {
    const data = columnAt(sheet, Number(key));
    return data ? [[Number(key), data]] : [];
  });
}

function rowAt(sheet: Worksheet, row: number) {
  return sheet.getConfig().rowData[row];
}

function columnAt(sheet: Worksheet, column: number) {
  return sheet.getConfig().columnData[column];
}

function lastColumn({ rows, merges }: SheetView): number {
  let last = 0;
  for (const { cells } of rows) last = Math.max(last, cells.at(-1)?.column ?? 0);
  for (const { right } of merges) last = Math.max(last, right);
  return last;
}
