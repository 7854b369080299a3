import { isoDate } from '../../../cells/cell.ts';
import { driftCorrelation } from '../../../method/drift/driftCorrelation.ts';
import { driftPerYear } from '../../../method/drift/driftPerYear.ts';
import { straightLine } from '../../../method/record/straightLine.ts';
import { coverageFactor, TWO_SIGMA } from '../../../method/uncertainty/coverageFactor.ts';
import type { DriftResult } from '../../model/drift.ts';
import type { ChannelReading } from './channelReadings.ts';
import { countingReadings } from './countingReadings.ts';
import { driftForecast, type DriftLimits } from './driftForecast.ts';

/** Readings, and days on which they were taken, that a drift needs: two leave no way to tell it from scatter. */
export const leastReadings = 3;

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
