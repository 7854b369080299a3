import { roundToEarlySide } from '../roundToEarlySide.ts';
import type { Direction } from './direction.ts';
import { axialIndicated } from './indicated.ts';

/**
 * Position setpoint that would act at the intended real position while the chain is not corrected: what the monitor
 * shows there, rounded towards zero to the monitor's resolution (`null`: not rounded), signed, in the displacement unit
 * of the sensitivities. `NaN` where it falls on zero or its other side, where no setpoint of this direction can restore
 * the intent, where even one step of the resolution would act late, and for inputs out of range (`axialIndicated`).
 * Source: as `axialIndicated`. Example: 20 mil toward, 200 configured, 160 measured, one zero → 16 mil.
 */
export function axialInterim(
  setpoint: number,
  configured: number,
  measured: number,
  zeroConfigured: number,
  zeroMeasured: number,
  direction: Direction,
  resolution: number | null,
): number {
  const exact = axialIndicated(setpoint, configured, measured, zeroConfigured, zeroMeasured, direction);
  const offered = resolution === null ? exact : roundToEarlySide(exact, resolution);
  return Math.sign(offered) * Math.sign(setpoint) > 0 ? offered : NaN;
}
