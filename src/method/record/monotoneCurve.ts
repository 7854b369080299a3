import { type CalibrationRecord, stepNotFalling } from './calibrationRecord.ts';
import { bracketedRoot } from '../bracketedRoot.ts';
import { type Curve, segmentOf } from './curve.ts';
import { cubicThrough } from './hermite.ts';

/**
 * The record joined by a monotone piecewise cubic (Fritsch–Butland slopes); never outside neighbouring points. The
 * voltage has to fall all the way, `undefined` otherwise; V and the record's gap unit. Source: `monotoneSlopes`.
 * Example: a straight record is reproduced: −2, −4, −6 V at 10, 20, 30 mil → −3 V at 15 mil.
 */
export function monotoneCurve(record: CalibrationRecord): Curve | undefined {
  if (stepNotFalling(record) !== undefined) return undefined;
  const { gaps, volts } = record;
  const voltsAt = cubicThrough(gaps, volts);
  const rising = volts.map((volt) => -volt);
  return {
    from: gaps[0] ?? NaN,
    to: gaps.at(-1) ?? NaN,
    voltsAt,
    gapAt: (volt) => {
      const segment = segmentOf(rising, -volt);
      if (segment < 0) return NaN;
      const [start, end] = [gaps[segment] ?? NaN, gaps[segment + 1] ?? NaN];
      return bracketedRoot((gap) => voltsAt(gap) - volt, start, end);
    },
  };
}
