import { isBlank, type Cell } from '../../../cells/cell.ts';
import { fixedOffset, offsetAtOf, utcOf } from '../../../method/replay/localTime.ts';
import type { TrendClock } from '../../model/trend.ts';
import { readDate } from '../rows/date.ts';

/** Why a cell is no time. */
export type TimeFault =
  'blank' | 'no time' | 'no zone' | 'two different days' | 'no day of the calendar' | 'does not exist';

/** Reads the times of a trend, cell by cell. */
export interface TimeReader {
  /** Milliseconds since 1970 in UTC; `NaN` where the cell is no time, of which `fault` tells why. */
  readonly read: (date: Cell, clock: Cell) => number;
  /** The second time that the last cell may mean, in an hour that the clock repeats; `NaN` for any other. */
  readonly other: () => number;
  /** The last time as the clock showed it: milliseconds as if it were UTC. */
  readonly local: () => number;
  readonly fault: () => TimeFault | null;
  /** Whether a time was read by the zone, naming no offset itself. */
  readonly usedZone: () => boolean;
}

const DAY = 86_400_000;
const QUARTER = 15 * 60_000;
/** Day 0 of the usual spreadsheet calendar, counted from 1970-01-01. */
const spreadsheetEpoch = -25_569;
const clockForm =
  /^(\d{1,2}):(\d{2})(?::(\d{2})(?:[.,](\d{1,9}))?)? ?([ap]m)? ?(z|utc|gmt|[+-]\d{2}(?::?\d{2})?)?$/iu;
const slashed = /^(\d{1,2})[-/.](\d{1,2})[-/.](\d{4})$/u;

/** A reader of times; `clock` holds where they name no offset. Zones by the computer's time zone data. */
export function timeReader({ zone, dates }: TrendClock): TimeReader {
  const offsetAt = zone === null ? null : offsetAtOf(zone);
  let [other, local, usedZone] = [NaN, NaN, false];
  let fault: TimeFault | null = null;
  let [dayText, dayOfText] = ['', NaN];
  let [quarter, candidates]: [number, readonly number[]] = [NaN, []];
  // In a long table one instant stands in many rows.
  let [lastText, lastTime, lastOther, lastLocal] = ['', NaN, NaN, NaN];

  const none = (why: TimeFault): number => {
    fault = why;
    return NaN;
  };
  const dayOf = (text: string): number => {
    if (text === dayText) return dayOfText;
    const day = dayIn(text, dates);
    if (typeof day === 'string') return none(day);
    [dayText, dayOfText] = [text, day];
    return day;
  };
  const byZone = (): number => {
    if (!offsetAt) return none('no zone');
    usedZone = true;
    const start = Math.floor(local / QUARTER) * QUARTER;
    if (start !== quarter) {
      quarter = start;
      // Offsets change at quarters of an hour alone.
      candidates = utcOf(start, offsetAt).map((utc) => utc - start);
    }
    const [first, second = NaN] = candidates;
    if (first === undefined) return none('does not exist');
    other = local + second;
    return local + first;
  };
  const byText = (text: string): number => {
    const quick = quickTime(text);
    if (quick >= 0) {
      const day = dayOf(text.slice(0, 10));
      if (Number.isNaN(day)) return NaN;
      local = day * DAY + quick;
      if (!text.endsWith('Z')) return byZone();
      return local;
    }
    const colon = text.indexOf(':');
    const start = /\d/u.test(text.charAt(colon - 2)) ? colon - 2 : colon - 1;
    const found = colon < 0 || text.length > 60 ? null : clockForm.exec(text.slice(start).trim());
    if (!found) return none('no time');
    const day = dayOf(
      text
        .slice(0, start)
        .replace(/[T ,]{1,3}$/u, '')
        .trim(),
    );
    if (Number.isNaN(day)) return NaN;
    const ofDay = clockTime(found);
    if (Number.isNaN(ofDay)) return none('no time');
    local = day * DAY + ofDay;
    if (found[6] === undefined) return byZone();
    return local - (fixedOffset(found[6]) ?? none('no time'));
  };
  return {
    read: (date, clock) => {
      [other, local, fault] = [NaN, NaN, null];
      const cell = date === null ? clock : joined(date, clock);
      if (cell === null || isBlank(cell)) return none('blank');
      if (typeof cell === 'string') {
        if (cell === lastText && date === null) {
          [other, local] = [lastOther, lastLocal];
          return lastTime;
        }
        const time = byText(cell.trim());
        if (!Number.isNaN(time)) [lastText, lastTime, lastOther, lastLocal] = [cell, time, other, local];
        return time;
      }
      local = dateOf(cell);
      return Number.isNaN(local) ? none('no time') : byZone();
    },
    other: () => other,
    local: () => local,
    fault: () => fault,
    usedZone: () => usedZone,
  };
}

/** The order in which slashed or dotted dates are written, as far as one of them tells: its day is above 12. */
export function dateOrderIn(text: string): TrendClock['dates'] {
  const [, first, second] = slashed.exec(text.trim().split(/[T ,]/u, 1)[0] ?? '') ?? [];
  if (Number(first) > 12) return 'day first';
  return Number(second) > 12 ? 'month first' : null;
}

function dayIn(text: string, dates: TrendClock['dates']): number | TimeFault {
  const [, first, second, year] = slashed.exec(text) ?? [];
  if (first !== undefined && dates !== null) {
    const [day, month] = dates === 'day first' ? [first, second] : [second, first];
    const read = readDate(`${year}-${month}-${day}`);
    return 'day' in read ? read.day : 'no day of the calendar';
  }
  const read = readDate(text);
  if ('day' in read) return read.day;
  return read.why === 'no date' ? 'no time' : read.why;
}

/** A date and a time of day in two cells, as one. */
function joined(date: Cell, clock: Cell): Cell {
  if (clock === null) return date;
  if (typeof date === 'string' && typeof clock === 'string') return `${date.trim()} ${clock.trim()}`;
  if (typeof date === 'string') return date;
  if (date === null) return clock;
  const [day, part] = [dateOf(date), typeof clock === 'number' ? clock * DAY : dateOf(clock) % DAY];
  return (Math.floor(day / DAY) * DAY + part) / DAY - spreadsheetEpoch;
}

/** Milliseconds of a date cell, or of a number that counts days as spreadsheets do; `NaN` for any other. */
function dateOf(cell: Exclude<Cell, null>): number {
  if (typeof cell === 'object' && 'day' in cell) return Math.round(cell.day * DAY);
  if (typeof cell === 'number' && cell >= 18_264 && cell < 73_051)
    return Math.round((cell + spreadsheetEpoch) * DAY);
  return NaN;
}

function clockTime([, hour = '', minute = '', second = '0', part = '', half]: readonly string[]): number {
  const [h, m, s] = [Number(hour), Number(minute), Number(second)];
  if (m > 59 || s > 59 || h > 23 || (half !== undefined && (h < 1 || h > 12))) return NaN;
  const of24 = half === undefined ? h : (h % 12) + (half.toLowerCase() === 'pm' ? 12 : 0);
  return of24 * 3_600_000 + m * 60_000 + s * 1000 + (part === '' ? 0 : Number(`0.${part}`) * 1000);
}

/** Time of day of `2026-03-14T02:15:00`, with `.250` and `Z` where they stand there; −1 for any other form. */
function quickTime(text: string): number {
  const { length } = text;
  if (length < 19 || length > 24 || text.charCodeAt(4) !== 45 || text.charCodeAt(7) !== 45) return -1;
  if (text.charCodeAt(13) !== 58 || text.charCodeAt(16) !== 58) return -1;
  const separator = text.charCodeAt(10);
  if (separator !== 84 && separator !== 32) return -1;
  const end = text.charCodeAt(length - 1) === 90 ? length - 1 : length;
  const [h, m, s] = [pair(text, 11), pair(text, 14), pair(text, 17)];
  if (!(h < 24 && m < 60 && s < 60)) return -1;
  const whole = h * 3_600_000 + m * 60_000 + s * 1000;
  if (end === 19) return whole;
  if (text.charCodeAt(19) !== 46 || end < 21) return -1;
  let [value, unit] = [0, 100];
  for (let at = 20; at < end; at++) {
    const digit = text.charCodeAt(at) - 48;
    if (digit < 0 || digit > 9) return -1;
    value += digit * unit;
    unit /= 10;
  }
  return whole + value;
}

function pair(text: string, at: number): number {
  const [tens, ones] = [text.charCodeAt(at) - 48, text.charCodeAt(at + 1) - 48];
  return tens < 0 || tens > 9 || ones < 0 || ones > 9 ? NaN : 10 * tens + ones;
}
