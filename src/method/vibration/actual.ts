import { indicated } from './indicated.ts';

/**
 * Real vibration behind an indicated reading D, D·Kc/Km, in the unit of the reading (0 or above). Both sensitivities
 * in one unit, above 0; `NaN` otherwise. Source: inverse of `indicated`.
 * Example: 4 mil shown at 200 configured, 160 measured is 5 mil real.
 */
export function actual(reading: number, configured: number, measured: number): number {
  return indicated(reading, measured, configured);
}
