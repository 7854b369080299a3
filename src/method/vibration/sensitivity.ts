import { positive, fraction } from '../range.ts';

/**
 * Error of the sensitivity as a fraction of the configured one, Km/Kc − 1. Both in one unit, above 0; `NaN`
 * otherwise. Source: definition of relative error. Example: 200 configured, 160 measured → −0.2.
 */
export function sensitivityError(configured: number, measured: number): number {
  return positive(configured) && positive(measured) ? (measured - configured) / configured : NaN;
}

/**
 * Sensitivity that a monitor really divides by when its own gain is off, Kc/g, in the unit of `configured`.
 * `gain` is indicated/injected for a known injected signal, 1 being perfect. Both above 0; `NaN` otherwise.
 * Source: the gain multiplies the reading. Example: 200 at a gain of 0.98 → 204.08.
 */
export function configuredFromGain(configured: number, gain: number): number {
  return positive(configured) && positive(gain) ? configured / gain : NaN;
}

/**
 * Relative expanded uncertainty of Km·g, the sensitivity of chain and monitor together, √(U² + U_g²): both at one
 * coverage factor, fractions in [0, 1); `NaN` otherwise. Source: law of propagation, first order; the product of two
 * normals is taken as normal. Example: 3 % and 1 % → 3.162 %.
 */
export function withGainUncertainty(uncertainty: number, gainUncertainty: number): number {
  return fraction(uncertainty) && fraction(gainUncertainty) ? Math.hypot(uncertainty, gainUncertainty) : NaN;
}
