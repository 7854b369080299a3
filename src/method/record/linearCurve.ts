import { type CalibrationRecord, stepNotFalling } from './calibrationRecord.ts';
import { type Curve, segmentOf } from './curve.ts';

/**
 * The record joined by straight pieces. The voltage has to fall all the way, `undefined` otherwise; V and the record's
 * gap unit. Source: linear interpolation. Example: −2 V at 10 mil, −4 V at 20 mil → −3 V at 15 mil.
 */
export function linearCurve(record: CalibrationRecord): Curve | undefined {
  if (stepNotFalling(record) !== undefined) return undefined;
  const { gaps, volts } = record;
  const rising = volts.map((volt) => -volt);
  return {
    from: gaps[0] ?? NaN,
    to: gaps.at(-1) ?? NaN,
    voltsAt: (gap) => between(gaps, volts, gap),
    gapAt: (volt) => between(rising, gaps, -volt),
  };
}

/** The value at `at` between rising knots. */
function between(knots: readonly number[], values: readonly number[], at: number): number {
  const segment = segmentOf(knots, at);
  if (segment < 0) return NaN;
  const [start, end] = [knots[segment] ?? NaN, knots[segment + 1] ?? NaN];
  const [first, last] = [values[segment] ?? NaN, values[segment + 1] ?? NaN];
  return at === end ? last : first + ((at - start) / (end - start)) * (last - first);
}
