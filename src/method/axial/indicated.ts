import { positive } from '../range.ts';
import { type Direction, signOf } from './direction.ts';

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
