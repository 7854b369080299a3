import { isBlank } from '../../../cells/cell.ts';
import { type Sheet, cellAt } from '../../../cells/sheet.ts';
import { mayHeadRecord, type RecordColumn, recordColumns } from './recordHeaders.ts';
import { readNumber } from '../../../cells/number.ts';

/**
 * The headers of records that stand in one row between two columns, each with the columns it names: with a tag column a
 * long table; otherwise a block, a gap column and its volts column. `isFree` tells which columns may be looked at.
 */
export function recordParts(
  sheet: Sheet,
  row: number,
  isFree: (column: number) => boolean,
): RecordColumn[][] {
  const cells = sheet.rows[row - 1] ?? [];
  const mayHead = cells.some((cell, at) => typeof cell === 'string' && mayHeadRecord(cell) && isFree(at + 1));
  if (!mayHead) return [];
  const columns = recordColumns(sheet, row, 1, cells.length);
  return partsOf(
    sheet,
    row,
    columns.filter(({ column }) => isFree(column)),
  );
}

/** The first and last of some columns. */
export function spanOf(columns: Iterable<{ readonly column: number }>): {
  readonly left: number;
  readonly right: number;
} {
  let [left, right] = [Infinity, -Infinity];
  for (const { column } of columns) [left, right] = [Math.min(left, column), Math.max(right, column)];
  return { left, right };
}

/** Whether no cell of a row between two columns, both included, is blank. */
export function isUnbroken(sheet: Sheet, row: number, from: number, to: number): boolean {
  for (let column = from; column <= to; column++) if (isBlank(cellAt(sheet, row, column))) return false;
  return true;
}

/** The tables of one row of headers: one, or, where a header comes twice, the stretches between blank cells. */
function partsOf(sheet: Sheet, row: number, columns: readonly RecordColumn[]): RecordColumn[][] {
  const ids = columns.map(({ id }) => id);
  if (!ids.includes('volts')) return [];
  const twice = (['tag', 'gap', 'displacement', 'volts'] as const).some(
    (id) => ids.indexOf(id) !== ids.lastIndexOf(id),
  );
  const stretches = twice && ids.includes('tag') ? stretchesOf(sheet, row, columns) : [[...columns]];
  return stretches.flatMap((stretch) => {
    const has = new Set(stretch.map(({ id }) => id));
    if (!has.has('volts')) return [];
    if (has.has('tag')) return has.has('gap') || has.has('displacement') ? [stretch] : [];
    return pairs(stretch);
  });
}

function stretchesOf(sheet: Sheet, row: number, columns: readonly RecordColumn[]): RecordColumn[][] {
  const stretches: RecordColumn[][] = [];
  let before: RecordColumn | undefined;
  for (const column of columns) {
    if (before && isUnbroken(sheet, row, before.column, column.column)) stretches.at(-1)?.push(column);
    else stretches.push([column]);
    before = column;
  }
  return stretches;
}

/** Each gap column with the nearest volts column to its right, before the next gap column. */
function pairs(columns: readonly RecordColumn[]): RecordColumn[][] {
  const gaps = columns.filter(({ id }) => id === 'gap');
  return gaps.flatMap((gap, index) => {
    const end = gaps[index + 1]?.column ?? Infinity;
    const volts = columns.find(
      ({ id, column }) => id === 'volts' && column > gap.column && column < end && column <= gap.column + 3,
    );
    return volts ? [[gap, volts]] : [];
  });
}

/** Whether both cells of a point are empty. */
export function isEmptyPoint(sheet: Sheet, row: number, one: RecordColumn, other: RecordColumn): boolean {
  return isBlank(cellAt(sheet, row, one.column)) && isBlank(cellAt(sheet, row, other.column));
}

/** Whether both cells of a point can be read as numbers. */
export function isFilledPoint(sheet: Sheet, row: number, one: RecordColumn, other: RecordColumn): boolean {
  return isNumber(sheet, row, one.column) && isNumber(sheet, row, other.column);
}

/** Whether a cell can be read as a number. */
export function isNumber(sheet: Sheet, row: number, column: number): boolean {
  const cell = cellAt(sheet, row, column);
  return cell !== null && 'value' in readNumber(cell, sheet.plainText);
}
