import { type Band, NO_BAND, fraction } from '../range.ts';
import type { Direction } from './direction.ts';
import { axialEffective } from './effective.ts';

/**
 * Span of the effective position while Km lies within ±U of its measured value; the zero voltages are taken as exact.
 * Signed, `low` ≤ `high`; inputs and range as `axialEffective`, `uncertainty` a fraction in [0, 1); both `NaN`
 * otherwise. Source: T·Km does not depend on Km, so the ends are T/(1 ± U).
 * Example: T 25 mil at U 0.03 → 24.27 to 25.77 mil.
 */
export function axialBand(
  setpoint: number,
  configured: number,
  measured: number,
  zeroConfigured: number,
  zeroMeasured: number,
  direction: Direction,
  uncertainty: number,
): Band {
  const effective = axialEffective(setpoint, configured, measured, zeroConfigured, zeroMeasured, direction);
  if (Number.isNaN(effective) || !fraction(uncertainty)) return NO_BAND;
  const nearer = effective / (1 + uncertainty);
  const farther = effective / (1 - uncertainty);
  return effective < 0 ? { low: farther, high: nearer } : { low: nearer, high: farther };
}
