import { type Band, NO_BAND, fraction } from '../range.ts';
import { effectiveThreshold } from '../vibration/threshold.ts';

/**
 * Span of the effective threshold while Km lies within ±U of its measured value: [T/(1 + U), T/(1 − U)], in the unit of
 * the setpoint and not symmetric about T. Inputs and range as `effectiveThreshold`; `uncertainty` is the expanded
 * uncertainty as a fraction of Km, in [0, 1); both ends `NaN` otherwise. Source: T is a ratio, evaluated at the ends of
 * the interval of its denominator (JCGM 101:2008 9.3 shows why not to first order).
 * Example: 5 mil at 200 configured, 160 measured, U 0.03 → 6.068 to 6.443 mil.
 */
export function band(
  setpoint: number,
  configured: number,
  measured: number,
  uncertainty: number,
  multiplier: number,
): Band {
  const effective = effectiveThreshold(setpoint, configured, measured, multiplier);
  if (Number.isNaN(effective) || !fraction(uncertainty)) return NO_BAND;
  return { low: effective / (1 + uncertainty), high: effective / (1 - uncertainty) };
}
