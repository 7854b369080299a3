import type { Cell } from '../../cells/cell.ts';

/** Day 0 of the usual spreadsheet calendar, counted from 1970-01-01. */
const spreadsheetEpoch = -25_569;

/** The number that a cell stores, however it is shown: a percentage as a fraction, a date as its day number from 1900. */
export function plainNumber(cell: Cell): number | undefined {
  if (typeof cell === 'number') return cell;
  if (cell === null || typeof cell !== 'object') return undefined;
  if ('percent' in cell) return cell.percent / 100;
  return 'day' in cell ? cell.day - spreadsheetEpoch : undefined;
}
