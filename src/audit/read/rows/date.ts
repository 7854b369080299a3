import type { Cell } from '../../../cells/cell.ts';
import type { NotADate } from '../../model/rules/cellRules.ts';

export type DateRead = { readonly day: number } | { readonly why: NotADate };

const iso = /^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})(?:[T ].*)?$/u;
const namedMonth = /^(\d{1,2})[ -]([a-z]{3})[a-z]*[ -](\d{4})$/iu;
const dayFirst = /^(\d{1,2})[-/.](\d{1,2})[-/.](\d{4})$/u;
const months = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec'];
/** Day 0 of the usual spreadsheet calendar, counted from 1970-01-01. */
const spreadsheetEpoch = -25_569;

/**
 * Reads a cell as a calendar day, counted from 1970-01-01. Texts must name the year first (`2025-03-14`) or the month by
 * name (`14 Mar 2025`), since `03/04/2025` is two different days in two countries. A bare number from 1950 to 2099 in
 * the usual spreadsheet calendar counts as a date.
 */
export function readDate(cell: Exclude<Cell, null>): DateRead {
  if (typeof cell === 'object' && 'day' in cell) return { day: Math.floor(cell.day) };
  if (typeof cell === 'number' && cell >= 18_264 && cell < 73_051)
    return { day: Math.floor(cell) + spreadsheetEpoch };
  if (typeof cell !== 'string') return { why: 'no date' };
  const text = cell.trim();
  const parts = iso.exec(text);
  if (parts) return calendarDay(Number(parts[1]), Number(parts[2]), Number(parts[3]));
  const named = namedMonth.exec(text);
  if (named) {
    return calendarDay(
      Number(named[3]),
      months.indexOf((named[2] ?? '').toLowerCase()) + 1,
      Number(named[1]),
    );
  }
  const dotted = dayFirst.exec(text);
  if (dotted && Number(dotted[1]) > 12) {
    return calendarDay(Number(dotted[3]), Number(dotted[2]), Number(dotted[1]));
  }
  if (/^\d{1,2}[-/.]\d{1,2}[-/.]\d{2,4}$/u.test(text)) return { why: 'two different days' };
  return { why: 'no date' };
}

function calendarDay(year: number, month: number, day: number): DateRead {
  const time = Date.UTC(year, month - 1, day);
  const date = new Date(time);
  const real =
    date.getUTCFullYear() === year && date.getUTCMonth() === month - 1 && date.getUTCDate() === day;
  return real ? { day: time / 86_400_000 } : { why: 'no day of the calendar' };
}
