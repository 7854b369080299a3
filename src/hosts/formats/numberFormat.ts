import { type Cell, DateCell, PercentCell } from '../../cells/cell.ts';
import { dayOfSerial } from './dates.ts';

/** What a number format makes of a number for the person who reads the sheet. */
export type NumberKind = 'number' | 'date' | 'percent';

/** Built-in formats that are no plain number (ECMA-376 part 1, section 18.8.30): 27–36 and 50–58 are East Asian dates, 46 is elapsed time. */
const builtInDates = new Set([14, 15, 16, 17, 18, 19, 20, 21, 22, 45, 47, ...span(27, 36), ...span(50, 58)]);
const builtInPercents = new Set([9, 10]);

/** The kind of a format by its id, for ids the file gives no code for. */
export function kindOfBuiltIn(id: number): NumberKind {
  if (builtInDates.has(id)) return 'date';
  return builtInPercents.has(id) ? 'percent' : 'number';
}

/**
 * The kind of a format by its code (ECMA-376 part 1, section 18.8.31), judged by its first section, the one for
 * positive numbers. Quoted and escaped characters show as they are and mean nothing; an elapsed time such as
 * `[h]:mm` is a number of days, not a date.
 */
export function kindOfCode(code: string): NumberKind {
  const section = firstSection(code);
  if (/\[(h+|m+|s+)\]/i.test(section)) return 'number';
  const meaning = section.replace(/\[[^[\]]*\]/g, '');
  if (/[ymdhs]|a\/p/i.test(meaning)) return 'date';
  return meaning.includes('%') ? 'percent' : 'number';
}

/**
 * The text that a format by its code shows with a positive number: quoted and escaped characters, on one line; empty where
 * there is none. `0.0" mil"` → `mil`.
 */
export function shownTextOf(code: string): string {
  let text = '';
  for (const [part] of code.matchAll(/"[^"]*"?|\\[\s\S]|[_*][\s\S]?|\[[^\]]*\]|[\s\S]/g)) {
    if (part === ';') break;
    if (part.startsWith('"')) text += part.replaceAll('"', '');
    else if (part.startsWith('\\')) text += part.slice(1);
    else if (part === ' ') text += ' ';
  }
  return text.replace(/\s+/g, ' ').trim();
}

/** The code up to its first `;`, without quoted texts, escaped characters, width spaces (`_x`) and fillers (`*x`). */
function firstSection(code: string): string {
  const bare = code.replace(/"[^"]*"?|[\\_*][\s\S]?/g, '');
  return bare.split(';', 1)[0] ?? '';
}

function span(first: number, last: number): number[] {
  return Array.from({ length: last - first + 1 }, (_, index) => first + index);
}

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
