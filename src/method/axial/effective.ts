import { axialActual } from './actual.ts';
import type { Direction } from './direction.ts';

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
