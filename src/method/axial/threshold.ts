import { type Direction, axialActual, axialIndicated } from './position.ts';
import { type Band, NO_BAND, fraction } from '../range.ts';

/**
 * Real position at which a position setpoint acts, T = (S·Kc + s·(V0c − V0m))/Km, signed as the setpoint is, in the
 * displacement unit of the sensitivities (mV per unit, above 0); zero voltages in V. A `T` on the other side of zero
 * means that the setpoint acts at rest. `NaN` for a setpoint of 0 or any input out of range. Source: as
 * `axialIndicated`. Example: 20 mil toward, 200 configured, 160 measured, zero at −10 V in both → 25 mil.
 */
export function axialEffective(
  setpoint: number,
  configured: number,
  measured: number,
  zeroConfigured: number,
  zeroMeasured: number,
  direction: Direction,
): number {
  if (setpoint === 0) return NaN;
  return axialActual(setpoint, configured, measured, zeroConfigured, zeroMeasured, direction);
}

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

/**
 * Position on the panel that must be treated as the setpoint meant: what the monitor shows when the shaft really stands
 * at `setpoint`, with the whole uncertainty of Km counted against it. Signed, not rounded; `NaN` where it falls on zero
 * or its other side, so that no reading of this direction stands for it. Inputs, units and range as `axialIndicated`,
 * the setpoint not 0; `uncertainty` a fraction in [0, 1), 0 to count none. Source: as `axialIndicated`.
 * Example: 20 mil toward, 200 configured, 160 measured, one zero, U 0.03 → 15.52 mil.
 */
export function axialPanelLevel(
  setpoint: number,
  configured: number,
  measured: number,
  zeroConfigured: number,
  zeroMeasured: number,
  direction: Direction,
  uncertainty: number,
): number {
  if (!fraction(uncertainty)) return NaN;
  const least = measured * (1 - uncertainty);
  const shown = axialIndicated(setpoint, configured, least, zeroConfigured, zeroMeasured, direction);
  return shown * Math.sign(setpoint) > 0 ? shown : NaN;
}
