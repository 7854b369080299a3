import { actual } from './actual.ts';

/**
 * Real vibration left before a threshold acts, T − D·Kc/Km, in the unit of both: `effective` is the effective
 * threshold (`Infinity` where it cannot act), `reading` what the monitor shows now (0 or above). Below 0 the
 * threshold is already passed. Sensitivities in one unit, above 0; `NaN` otherwise. Source: definition.
 * Example: T 6.25 mil, 2 mil shown at 200 configured, 160 measured → 3.75 mil.
 */
export function headroom(effective: number, reading: number, configured: number, measured: number): number {
  return effective > 0 ? effective - actual(reading, configured, measured) : NaN;
}
