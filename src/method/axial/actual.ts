import type { Direction } from './direction.ts';
import { axialIndicated } from './indicated.ts';

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
