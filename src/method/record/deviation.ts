import { positive } from '../range.ts';
import type { CalibrationRecord } from './calibrationRecord.ts';
import type { StraightLine } from './straightLine.ts';

/** A line of gap voltages: volts = intercept − sensitivity·gap. */
export interface VoltageLine {
  /** V per gap unit, above 0. */
  readonly sensitivity: number;
  /** V at gap 0. */
  readonly intercept: number;
}

/**
 * The line of rated sensitivity whose largest deviation from the record is least: midway between its highest and its
 * lowest point off the slope. `rated` in V per gap unit, above 0; `undefined` otherwise.
 * Source: API 670 takes the deviation from the best line of rated slope (from memory); minimax by Chebyshev's
 * alternation, for a constant the mean of the extremes. Example: 10, 20, 30 mil at −2, −4.1, −6 V, rated 0.2 V/mil →
 * intercept −0.05 V.
 */
export function ratedLine({ gaps, volts }: CalibrationRecord, rated: number): VoltageLine | undefined {
  if (!positive(rated)) return undefined;
  let least = Infinity;
  let most = -Infinity;
  for (const [at, gap] of gaps.entries()) {
    const offset = (volts[at] ?? NaN) + rated * gap;
    least = Math.min(least, offset);
    most = Math.max(most, offset);
  }
  return { sensitivity: rated, intercept: (least + most) / 2 };
}

/** A fitted line of volts over gaps as a line of gap voltages; `undefined` where the voltage does not fall. */
export function fittedLine({ slope, intercept }: StraightLine): VoltageLine | undefined {
  return slope < 0 ? { sensitivity: -slope, intercept } : undefined;
}

/**
 * Deviation of each point from a line, in gap units: volts off the line ÷ the line's sensitivity; positive where the
 * voltage lies above the line. Source: as `ratedLine`. Example: the record there → +0.25, −0.25, +0.25 mil.
 */
export function deviations(
  { gaps, volts }: CalibrationRecord,
  { sensitivity, intercept }: VoltageLine,
): number[] {
  return gaps.map((gap, at) => ((volts[at] ?? NaN) - intercept + sensitivity * gap) / sensitivity);
}
