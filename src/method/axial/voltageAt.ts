import { positive } from '../range.ts';
import { type Direction, signOf } from './direction.ts';

/**
 * Gap voltage at which a position setpoint acts, V0c + s·S·Kc, in V. `setpoint` is signed and in the displacement unit
 * of `configured` (mV per unit, above 0), `zeroConfigured` in V; `NaN` where an input is not finite or out of range.
 * Source: inverse of the monitor's reading s·(V − V0c)/Kc. Example: 20 mil toward at 200 mV/mil about −10 V → −6 V.
 */
export function axialVoltageAt(
  setpoint: number,
  configured: number,
  zeroConfigured: number,
  direction: Direction,
): number {
  if (!Number.isFinite(setpoint) || !Number.isFinite(zeroConfigured) || !positive(configured)) return NaN;
  return zeroConfigured + (signOf(direction) * setpoint * configured) / 1000;
}
