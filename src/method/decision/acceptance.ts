import { type Band, NO_BAND, fraction, positive } from '../range.ts';

/**
 * Effective thresholds that a tolerance t on sensitivity accepts, [m·S/(1 + t), m·S/(1 − t)], in the unit of the
 * setpoint: the same decision as Km/Kc within [1 − t, 1 + t]. Setpoint (a magnitude) and multiplier above 0, t a
 * fraction in [0, 1); both ends `NaN` otherwise. Source: the tolerance is that of API 670 on the incremental scale
 * factor, 5 % (from memory). Example: 5 mil at 5 % → 4.762 to 5.263 mil.
 */
export function acceptanceBand(setpoint: number, tolerance: number, multiplier: number): Band {
  if (!positive(setpoint) || !positive(multiplier) || !fraction(tolerance)) return NO_BAND;
  const intended = multiplier * setpoint;
  return { low: intended / (1 + tolerance), high: intended / (1 - tolerance) };
}
