import { isBlank } from '../../../cells/cell.ts';
import { readNumber } from '../../../cells/number.ts';
import { type Sheet, cellAt } from '../../../cells/sheet.ts';
import type { RecordColumn } from './recordHeaders.ts';

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
