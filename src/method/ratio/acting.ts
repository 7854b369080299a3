import { type Band, NO_BAND, positive } from '../range.ts';
import { type Ratio, ratioBand, ratioBeyond } from './ratio.ts';

/**
 * How a chain turns what its monitor shows into what is real: real = factor·shown + shift. Uncertainties are expanded, at
 * one coverage factor.
 */
export interface Acting {
  /** Above 0. */
  readonly factor: number;
  /** Real value where the monitor shows 0 (a zero voltage that moved, the end of a loop), in the unit of the level. */
  readonly shift: number;
  /** Of what divides (the sensitivity, the span of a loop), a fraction of it in [0, 1). */
  readonly ofDivisor: number;
  /** Of the shift, in the unit of the level. */
  readonly ofShift: number;
  /** Of what the monitor makes of its signal (its gain), a fraction. */
  readonly ofGain: number;
  /** Covariance of shift and divisor, in the unit of the level and parts of the divisor; 0 where they are independent. */
  readonly both: number;
}

/** How widely a real value is known, as a ratio of two normals: expanded, the divisor counted as 1. */
export interface Spread {
  /** Of the divisor, a fraction. */
  readonly ofDivisor: number;
  /** Of the numerator, in the unit of the level. */
  readonly ofNumerator: number;
  readonly both: number;
}

/** Real value where the monitor shows `shown`, in its unit. Source: two straight lines. */
export function realOf({ factor, shift }: Acting, shown: number): number {
  return factor * shown + shift;
}

/** What the monitor shows where the real value is `real`: the inverse of `realOf`. */
export function shownAs({ factor, shift }: Acting, real: number): number {
  return (real - shift) / factor;
}

/** How widely that is known: the gain's part grows with the level. Source: law of propagation. */
export function spreadOf({ factor, ofDivisor, ofShift, ofGain, both }: Acting, shown: number): Spread {
  return { ofDivisor, ofNumerator: Math.hypot(ofShift, ofGain * factor * shown), both };
}

/** A real value with its spread as a ratio of two normals whose divisor is 1; use with a coverage of 1. */
function ratioOf(real: number, { ofDivisor, ofNumerator, both }: Spread): Ratio {
  return { a: real, b: 1, ua: ofNumerator, ub: ofDivisor, uab: both };
}

/** Span of a real value at the coverage of its uncertainties; both ends `NaN` out of range. Source: Fieller (`ratioBand`). */
export function spreadBand(real: number, spread: Spread): Band {
  return Number.isFinite(real) ? ratioBand(ratioOf(real, spread), 1) : NO_BAND;
}

/**
 * Probability, 0 to 1, that a threshold acts beyond `limit` (above 0) on the side of `sign`; `coverage` is that of the
 * uncertainties. `NaN` out of range. Source: `ratioBeyond`. Example: 19.474 with 3 % and 0.526, limit 21, k 2 → 0.0001.
 */
export function spreadBeyond(
  real: number,
  { ofDivisor, ofNumerator, both }: Spread,
  sign: number,
  limit: number,
  coverage: number,
): number {
  if (!positive(limit) || !positive(coverage)) return NaN;
  return ratioBeyond(
    {
      a: sign * real,
      b: 1,
      ua: ofNumerator / coverage,
      ub: ofDivisor / coverage,
      uab: (sign * both) / coverage ** 2,
    },
    limit,
  );
}

/**
 * What the monitor shows when the real value is `real` (not 0), with all uncertainty counted against the reading where
 * `counted`: the setpoint whose interval ends at `real`. In the unit of `real`; `NaN` where it falls on zero or its other
 * side. Source: the inverse of Fieller's end. Example: factor 1.25, no shift, 5 real, divisor 3 % → shows 3.88.
 */
export function shownAt(acting: Acting, real: number, counted: boolean): number {
  const { factor, shift, ofDivisor, ofShift, ofGain, both } = acting;
  if (!positive(factor) || real === 0) return NaN;
  const moved = real - shift;
  let part = moved;
  if (counted) {
    // (moved − x)² = ofShift² + ofGain²·x² − 2·real·both + real²·ofDivisor², x = factor·shown
    const fixed = ofShift ** 2 - 2 * real * both + (real * ofDivisor) ** 2;
    const rest = 1 - ofGain ** 2;
    const root = Math.sqrt(Math.max(0, ofGain ** 2 * moved ** 2 + rest * fixed));
    part = (moved - Math.sign(real) * root) / rest;
  }
  const shown = part / factor;
  return shown * Math.sign(real) > 0 ? shown : NaN;
}
