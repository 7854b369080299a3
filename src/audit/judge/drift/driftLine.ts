import { isoDate } from '../../../cells/cell.ts';
import { driftPerYear, driftCorrelation, reachesLevelSpan, reachesLevel } from '../../../method/drift.ts';
import { straightLine, type StraightLine } from '../../../method/record/straightLine.ts';
import { coverageFactor, TWO_SIGMA } from '../../../method/uncertainty.ts';
import type { DriftResult, DriftForecast } from '../../model/drift.ts';
import { type ChannelReading, countingReadings } from './channelReadings.ts';

/** What the drift of one channel is worked out with. */
interface DriftLimits {
  readonly configured: number;
  readonly unit: string;
  /** Accepted departure of the sensitivity from the configured one, as a fraction. */
  readonly tolerance: number;
  /** Day of the audit, from 1970-01-01. */
  readonly today: number;
}

/** The last day that a date of four digits can name: 9999-12-31, counted from 1970-01-01. */
const lastDay = 2_932_896;

/** Readings, and days on which they were taken, that a drift needs: two leave no way to tell it from scatter. */
const leastReadings = 3;

/** Why no drift was worked out: the readings that count, and from which correction on. */
export interface TooFew {
  readonly readings: number;
  readonly days: number;
  readonly since: string | null;
}

/** The least-squares line of a channel's readings against time, and when it leaves the tolerance. */
export function driftLine(all: readonly ChannelReading[], limits: DriftLimits): DriftResult | TooFew {
  const { readings, from, found } = countingReadings(all);
  const counted = readings.slice(from);
  const [first] = counted;
  const startsAnew =
    found && first ? { date: isoDate(first.day), found: found.sensitivity, left: first.sensitivity } : null;
  const days = new Set(counted.map(({ day }) => day)).size;
  const line =
    first && days >= leastReadings
      ? straightLine(
          counted.map(({ day }) => day - first.day),
          counted.map(({ sensitivity }) => sensitivity),
        )
      : undefined;
  if (!first || !line) return { readings: counted.length, days, since: startsAnew?.date ?? null };
  const freedom = counted.length - 2;
  const coverage = coverageFactor(TWO_SIGMA, freedom);
  const perYear = driftPerYear(line.slope);
  const standard = driftPerYear(line.slopeUncertainty);
  const correlation = driftCorrelation(line);
  return {
    unit: limits.unit,
    readings: readings.map(({ day, sensitivity, asLeft, uncertainty, from: source, sheet, row }, at) => ({
      date: isoDate(day),
      sensitivity,
      asLeft,
      uncertainty,
      from: source,
      sheet,
      row,
      counts: at >= from,
    })),
    startsAnew,
    days: (counted.at(-1)?.day ?? first.day) - first.day,
    perYear,
    perYearFraction: perYear / limits.configured,
    standardUncertainty: standard,
    expandedUncertainty: coverage * standard,
    coverage,
    level: TWO_SIGMA,
    degreesOfFreedom: freedom,
    correlation: Number.isNaN(correlation) ? null : correlation,
    residualDeviation: line.residualDeviation,
    atFirst: line.intercept,
    leaves: driftForecast(line, first.day, coverage, limits),
  };
}

/**
 * When the line through a channel's readings leaves the tolerance Kc·(1 ± t) on the side towards which it runs. `line` is
 * in days from `origin` (a day from 1970-01-01); `coverage` is Student's t for its scatter. A line that lies beyond the
 * tolerance on the other side gets no dates: it runs back into it.
 */
function driftForecast(
  line: StraightLine,
  origin: number,
  coverage: number,
  { configured, tolerance, today }: DriftLimits,
): DriftForecast {
  const now = line.intercept + line.slope * (today - origin);
  const [low, high] = [configured * (1 - tolerance), configured * (1 + tolerance)];
  const state = now >= low && now <= high ? 'inside' : 'outside';
  const side = Math.sign(line.slope);
  const none = { state, limit: null, days: null, on: null, earliest: null, latest: null } as const;
  if (side === 0 || (side > 0 ? now < low : now > high)) return none;
  const limit = side > 0 ? high : low;
  const days = reachesLevel(line, limit);
  const span = reachesLevelSpan(line, limit, coverage);
  return {
    state,
    limit,
    days: Number.isFinite(days) ? days : null,
    on: dateOf(origin + Math.floor(days)),
    earliest: dateOf(Math.min(lastDay, origin + Math.floor(span.from))),
    latest: dateOf(origin + Math.ceil(span.to)),
  };
}

/** A day as a date; `null` where a calendar of four-digit years does not reach it. */
function dateOf(day: number): string | null {
  return day >= 0 && day <= lastDay ? isoDate(day) : null;
}
