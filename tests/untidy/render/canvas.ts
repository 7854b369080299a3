import type { Cell } from '../../../src/cells/cell.ts';
import type { Area, Sheet } from '../../../src/cells/sheet.ts';
import { applyMerges } from '../../../src/hosts/formats/merges.ts';

/** A sheet while cells are put on it. */
export interface Canvas {
  readonly name: string;
  hidden: boolean;
  readonly rows: Cell[][];
  readonly merged: Area[];
  readonly hiddenRows: Set<number>;
  readonly hiddenColumns: Set<number>;
}

export function canvas(name: string, hidden: boolean): Canvas {
  return { name, hidden, rows: [], merged: [], hiddenRows: new Set(), hiddenColumns: new Set() };
}

export function put(on: Canvas, row: number, column: number, cell: Cell): void {
  while (on.rows.length < row) on.rows.push([]);
  const cells = on.rows[row - 1]!;
  while (cells.length < column) cells.push(null);
  cells[column - 1] = cell;
}

/** Merges an area of more than one cell. */
export function merge(on: Canvas, top: number, left: number, bottom: number, right: number): void {
  if (top !== bottom || left !== right) on.merged.push({ top, left, bottom, right });
}

/** As a reader of workbook files delivers it: merged cells read as they look. */
export function sheetOf({ name, hidden, rows, merged, hiddenRows, hiddenColumns }: Canvas): Sheet {
  const read = rows.map((cells) => [...cells]);
  applyMerges(read, merged, () => undefined);
  return { name, hidden, rows: read, hiddenRows, tables: [], merged, hiddenColumns };
}
