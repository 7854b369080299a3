import { fraction } from '../range.ts';

/**
 * Relative expanded uncertainty of Km·g, the sensitivity of chain and monitor together, √(U² + U_g²): both at one
 * coverage factor, fractions in [0, 1); `NaN` otherwise. Source: law of propagation, first order; the product of two
 * normals is taken as normal. Example: 3 % and 1 % → 3.162 %.
 */
export function withGainUncertainty(uncertainty: number, gainUncertainty: number): number {
  return fraction(uncertainty) && fraction(gainUncertainty) ? Math.hypot(uncertainty, gainUncertainty) : NaN;
}
