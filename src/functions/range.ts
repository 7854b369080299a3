/** A range as it arrives: rows of cells, perhaps of unequal length. */
export type Range = readonly (readonly unknown[])[];

/** The value itself, or the cell of a range that has one or none. */
export function singleCell(value: unknown): unknown {
  return isRange(value) ? value[0]?.[0] : value;
}

/** Rows and columns of a range. */
export interface Shape {
  readonly rows: number;
  readonly columns: number;
}

/** Whether a value is rows of cells; a flat list is none. */
export function isRange(value: unknown): value is Range {
  return Array.isArray(value) && (value.length === 0 || Array.isArray(value[0]));
}

/** Whether a range has more than one cell. */
export function reaches(range: Range): boolean {
  return range.length > 1 || (range[0]?.length ?? 0) > 1;
}

export function shapeOf(range: Range): Shape {
  let columns = 0;
  for (const row of range) if (Array.isArray(row) && row.length > columns) columns = row.length;
  return { rows: range.length, columns };
}

/** Marks a place of the result that a range does not reach. */
export const BEYOND = Symbol('beyond the range');

/**
 * The cell of a range for one place of the result, as a spreadsheet spreads it: one row serves all rows, one column all
 * columns; a shorter range has no cell for the rest.
 */
export function cellAt(range: Range, { rows, columns }: Shape, row: number, column: number): unknown {
  const down = rows === 1 ? 0 : row;
  const across = columns === 1 ? 0 : column;
  return down < rows && across < columns ? range[down]?.[across] : BEYOND;
}
