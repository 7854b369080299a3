import { positive } from '../range.ts';

/** The shaft movement that a position channel counts as positive: towards its probe, or away from it. */
export type Direction = 'toward' | 'away';

/**
 * Sign of the gap voltage's change for positive movement: +1 towards the probe, −1 away from it. Gap voltages are
 * negative and grow more negative with the gap (common practice, no source).
 */
export function signOf(direction: Direction): 1 | -1 {
  return direction === 'toward' ? 1 : -1;
}

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

/**
 * Position that the monitor shows when the shaft really stands at `real`, (P·Km + s·(V0m − V0c))/Kc, signed, in the
 * displacement unit of the sensitivities (mV per unit, above 0). Zero voltages in V. `NaN` where an input is not finite
 * or out of range. Source: the monitor's reading s·(V − V0c)/Kc at V = V0m + s·P·Km.
 * Example: 20 mil real toward, 200 configured, 160 measured, zero at −10 V in both, shows 16 mil.
 */
export function axialIndicated(
  real: number,
  configured: number,
  measured: number,
  zeroConfigured: number,
  zeroMeasured: number,
  direction: Direction,
): number {
  if (!Number.isFinite(real) || !positive(configured) || !positive(measured)) return NaN;
  if (!Number.isFinite(zeroConfigured) || !Number.isFinite(zeroMeasured)) return NaN;
  return (real * measured + signOf(direction) * (zeroMeasured - zeroConfigured) * 1000) / configured;
}

/**
 * Real position behind an indicated one, (P·Kc + s·(V0c − V0m))/Km, signed; inputs, units and range as
 * `axialIndicated`, whose inverse it is. Example: 16 mil shown toward, 200 configured, 160 measured, zero at −10 V in
 * both, is 20 mil real.
 */
export function axialActual(
  reading: number,
  configured: number,
  measured: number,
  zeroConfigured: number,
  zeroMeasured: number,
  direction: Direction,
): number {
  return axialIndicated(reading, measured, configured, zeroMeasured, zeroConfigured, direction);
}
