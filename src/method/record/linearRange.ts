import { fraction, positive } from '../range.ts';
import { type CalibrationRecord, incrementalSensitivity } from './calibrationRecord.ts';
import { deviations, ratedLine } from './deviation.ts';
import { linearReach } from '../reach.ts';

/** A run of consecutive steps of a record. */
export interface LinearRange {
  /** Gaps at its ends, in the record's unit. */
  readonly from: number;
  readonly to: number;
  /** Points at its ends, from 0. */
  readonly first: number;
  readonly last: number;
}

export interface LinearLimits {
  /** V per gap unit, above 0. */
  readonly rated: number;
  /** Of the incremental sensitivity, a fraction of the rated one in [0, 1). */
  readonly tolerance: number;
  /** Greatest deviation from the line of rated slope, in gap units, 0 or above. */
  readonly deviation: number;
  /** A gap that the range has to contain; left out, the longest counts. */
  readonly midGap?: number;
}

/**
 * The longest run of consecutive steps all of whose incremental sensitivities lie within the tolerance of the rated one
 * and all of whose points lie within the deviation of the line of rated slope that fits that run best (minimax). With a
 * mid-gap, the longest run that contains it. Of equally long ones the first. `undefined` where there is none or an
 * input is out of range. Source: API 670, ±5 % and ±1 mil (from memory).
 * Example: a straight record of 0.2 V/mil from 10 to 90 mil with a last step of 0.15 → 10 to 85.
 */
export function linearRange(record: CalibrationRecord, limits: LinearLimits): LinearRange | undefined {
  const { rated, tolerance, deviation, midGap } = limits;
  if (!positive(rated) || !fraction(tolerance) || !(deviation >= 0)) return undefined;
  const { gaps, volts } = record;
  const allowed = tolerance * rated * (1 + 1e-9);
  const steps = incrementalSensitivity(record).map((step) => Math.abs(step - rated) <= allowed);
  let best: LinearRange | undefined;
  for (let first = 0; first < steps.length; first++) {
    let least = Infinity;
    let most = -Infinity;
    for (let last = first; last < gaps.length; last++) {
      if (last > first && steps[last - 1] !== true) break;
      const offset = (volts[last] ?? NaN) + rated * (gaps[last] ?? NaN);
      least = Math.min(least, offset);
      most = Math.max(most, offset);
      if (!((most - least) / 2 <= deviation * rated * (1 + 1e-9))) break;
      const range = { from: gaps[first] ?? NaN, to: gaps[last] ?? NaN, first, last };
      if (last > first && contains(range, midGap) && isLonger(range, best)) best = range;
    }
  }
  return best;
}

/** The deviations of a range's points from the line of rated slope that fits that range best, in gap units. */
export function rangeDeviations(
  { gaps, volts }: CalibrationRecord,
  { first, last }: LinearRange,
  rated: number,
): number[] {
  const part = { gaps: gaps.slice(first, last + 1), volts: volts.slice(first, last + 1), sorted: false };
  const line = ratedLine(part, rated);
  return line ? deviations(part, line) : [];
}

function contains({ from, to }: LinearRange, gap: number | undefined): boolean {
  return gap === undefined || (gap >= from && gap <= to);
}

function isLonger({ from, to }: LinearRange, best: LinearRange | undefined): boolean {
  return !best || to - from > (best.to - best.from) * (1 + 1e-12);
}

/**
 * Largest peak-to-peak swing about an operating gap that stays inside the linear range of its record, in the record's
 * gap unit; 0 where the gap lies outside the range, `NaN` where it is no number. A threshold beyond it is out of reach.
 * Source: as `linearReach`. Example: gap 50 in a linear range of 10 to 80 mil → 60 mil.
 */
export function recordReach({ from, to }: LinearRange, operatingGap: number): number {
  return linearReach(operatingGap, from, to);
}
