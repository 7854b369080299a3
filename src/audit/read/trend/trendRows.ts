import { cellText, isBlank, type Cell } from '../../../cells/cell.ts';
import { readNumber } from '../../../cells/number.ts';
import { localToUtc, offsetAtOf } from '../../../method/replay/localTime.ts';
import type { TrendClock, TrendSource } from '../../model/trend.ts';
import { timeReader, type TimeFault } from './timeReader.ts';
import type { TrendHead } from './trendHead.ts';

/** Why rows of a trend were left out, or readings taken as unknown. */
type TrendFault = TimeFault | 'ambiguous' | 'no tag' | 'no number' | 'bad quality';

/** What is wrong with cells of a trend, kind by kind: the first rows, how many in all, and the first text. */
export interface TrendTrouble {
  readonly fault: TrendFault;
  readonly rows: number[];
  count: number;
  readonly text: string;
  readonly column: number;
}

/** Takes the readings of one tag: milliseconds since 1970 in UTC, `NaN` a reading that is unknown. */
export type TakeReading = (utc: number, reading: number) => void;

/** Who takes the readings of a tag, and of which machine where the table names one; `null`: nobody. */
export type SeriesOf = (tag: string, machine: string, unit: string | null) => TakeReading | null;

/** What came of reading a table of recorded readings. */
export interface TrendRead {
  readonly rows: number;
  readonly leftOut: number;
  readonly troubles: readonly TrendTrouble[];
  readonly usedZone: boolean;
}

/** Rows between two steps. */
const stride = 20_000;
/** Rows of a trouble that are named. */
const mostNamed = 5;
const goodQuality = /^(?:good|ok|valid|192|0xc0|gut|bon|bueno|yes|y|1)$/iu;

/** An hour that the clock repeats, waiting for its order in the file. */
interface Waiting {
  readonly locals: number[];
  readonly readings: number[];
  readonly rows: number[];
  readonly first: number;
  last: number;
}

interface Series {
  readonly take: TakeReading;
  waiting: Waiting | null;
}

/**
 * Goes through a table of recorded readings and hands each reading to whom `seriesOf` names, in the order of the file. Times
 * become UTC; one in an hour that the clock repeats is the first or second by the order in the file, else it is ambiguous:
 * the readings of that hour count as unknown. `enough` ends it early.
 */
export function* readTrend(
  source: TrendSource,
  head: TrendHead,
  clock: TrendClock,
  seriesOf: SeriesOf,
  enough: () => boolean = () => false,
): Generator<void, TrendRead, void> {
  const zone = head.zone ?? clock.zone;
  const times = timeReader({ zone, dates: clock.dates });
  const offsetAt = zone === null ? null : offsetAtOf(zone);
  const troubles = new Map<TrendFault, TrendTrouble>();
  let [row, data, leftOut] = [0, 0, 0];
  const trouble = (fault: TrendFault, at: number, cell: Cell, column: number): void => {
    let one = troubles.get(fault);
    if (!one) {
      one = { fault, rows: [], count: 0, text: cell === null ? '' : cellText(cell), column };
      troubles.set(fault, one);
    }
    one.count++;
    if (one.rows.length < mostNamed) one.rows.push(at);
  };
  const settle = (series: Series): void => {
    if (!series.waiting || !offsetAt) return;
    const { locals, readings, rows, first, last } = series.waiting;
    series.waiting = null;
    const utc = localToUtc(locals, offsetAt);
    if (utc.some((time) => typeof time !== 'number')) {
      series.take(first, NaN);
      series.take(last, NaN);
      for (const at of rows) trouble('ambiguous', at, null, head.time);
      leftOut += rows.length;
      return;
    }
    for (const [index, time] of utc.entries()) series.take(Number(time), readings[index] ?? NaN);
  };
  const give = (series: Series, utc: number, reading: number): void => {
    const other = times.other();
    if (Number.isNaN(other)) {
      if (series.waiting) settle(series);
      series.take(utc, reading);
      return;
    }
    series.waiting ??= { locals: [], readings: [], rows: [], first: utc, last: other };
    series.waiting.locals.push(times.local());
    series.waiting.readings.push(reading);
    series.waiting.rows.push(row);
    series.waiting.last = Math.max(series.waiting.last, other);
  };
  const numberOf = numberReader(source, (cell, column) => {
    trouble('no number', row, cell, column);
  });
  const isGood = (cells: readonly Cell[], quality: number | null): boolean => {
    if (quality === null) return true;
    const cell = cells[quality - 1] ?? null;
    if (cell === null || isBlank(cell) || goodQuality.test(cellText(cell))) return true;
    trouble('bad quality', row, cell, quality);
    return false;
  };
  const takers = seriesIn(head, seriesOf);
  const wide = head.columns.flatMap((column) => {
    const series = takers(column.tag, '', column.unit);
    return series ? [{ ...column, series }] : [];
  });
  const { long } = head;
  for (const cells of source.rows()) {
    if (++row <= head.row) continue;
    if (row % stride === 0) {
      yield;
      if (enough()) break;
    }
    if (cells.length === 0) continue;
    data++;
    const clockCell = cells[head.time - 1] ?? null;
    const utc = times.read(head.date === null ? null : (cells[head.date - 1] ?? null), clockCell);
    if (Number.isNaN(utc)) {
      const fault = times.fault() ?? 'no time';
      if (fault === 'blank' && cells.every(isBlank)) {
        data--;
        continue;
      }
      trouble(fault, row, clockCell, head.time);
      leftOut++;
      continue;
    }
    if (long) {
      const tag = cells[long.tag - 1] ?? null;
      if (tag === null || isBlank(tag)) {
        trouble('no tag', row, null, long.tag);
        leftOut++;
        continue;
      }
      const machine = long.machine === null ? null : (cells[long.machine - 1] ?? null);
      const unit = long.unitColumn === null ? null : (cells[long.unitColumn - 1] ?? null);
      const series = takers(
        textOf(tag),
        machine === null ? '' : textOf(machine),
        unit === null || isBlank(unit) ? long.unit : textOf(unit),
      );
      if (!series) continue;
      const reading = isGood(cells, long.quality)
        ? numberOf(cells[long.reading - 1] ?? null, long.reading)
        : NaN;
      give(series, utc, reading);
    } else
      for (const { column, quality, series } of wide)
        give(series, utc, isGood(cells, quality) ? numberOf(cells[column - 1] ?? null, column) : NaN);
  }
  for (const series of takers.all()) settle(series);
  return { rows: data, leftOut, troubles: [...troubles.values()], usedZone: times.usedZone() };
}

function textOf(cell: Exclude<Cell, null>): string {
  return typeof cell === 'string' ? cell : cellText(cell);
}

/** Looks each tag up once; `all` are those that somebody takes. */
function seriesIn(head: TrendHead, seriesOf: SeriesOf) {
  const byTag = new Map<string, Series | null>();
  const byMachine = new Map<string, Map<string, Series | null>>();
  const plain = head.long?.machine === null && head.long.unitColumn === null;
  const find = (tag: string, machine: string, unit: string | null): Series | null => {
    const known = plain ? byTag : inner(byMachine, `${machine}\n${unit ?? ''}`);
    let series = known.get(tag);
    if (series === undefined) {
      const take = seriesOf(tag.trim(), machine.trim(), unit);
      series = take ? { take, waiting: null } : null;
      known.set(tag, series);
    }
    return series;
  };
  return Object.assign(find, {
    all: () =>
      [...byTag.values(), ...[...byMachine.values()].flatMap((one) => [...one.values()])].filter(
        (series) => series !== null,
      ),
  });
}

function inner<V>(outer: Map<string, Map<string, V>>, key: string): Map<string, V> {
  const there = outer.get(key);
  if (there) return there;
  const made = new Map<string, V>();
  outer.set(key, made);
  return made;
}

/** Numbers of cells; `NaN` for a blank one, and for one that is none, of which is told. */
function numberReader(
  { plainText }: TrendSource,
  tell: (cell: Cell, column: number) => void,
): (cell: Cell, column: number) => number {
  const decimal = plainText?.decimal ?? '.';
  return (cell, column) => {
    if (typeof cell === 'number') return cell;
    if (cell === null || cell === '') return NaN;
    if (typeof cell === 'string' && decimal === '.') {
      const quick = Number(cell);
      const second = cell.charCodeAt(1);
      // `0x1F` is no number as people write them.
      if (Number.isFinite(quick) && cell.charCodeAt(0) > 32 && !(second > 90 && second !== 101)) return quick;
    }
    if (isBlank(cell)) return NaN;
    const read = readNumber(cell, plainText);
    if ('value' in read && !read.percent) return read.value;
    tell(cell, column);
    return NaN;
  };
}
