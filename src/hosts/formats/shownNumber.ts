import { type Cell, DateCell, PercentCell } from '../../cells/cell.ts';
import type { NumberKind } from './numberFormat.ts';
import { dayOfSerial } from './serialDate.ts';

/**
 * The cell a stored number stands for under a format of that kind; a number that no date is shown for stays a number.
 * `date1904` tells the date system of the workbook.
 */
export function shownNumber(value: number, kind: NumberKind, date1904: boolean): Cell {
  if (kind === 'percent') return new PercentCell(percentOf(value));
  if (kind === 'number') return value;
  const day = dayOfSerial(value, date1904);
  return day === undefined ? value : new DateCell(day);
}

/** `value` times 100 as the reader of the sheet sees it, rounded to 12 digits so that 0.07 is 7 and not 7.000000000000001. */
function percentOf(value: number): number {
  return Number((value * 100).toPrecision(12));
}
