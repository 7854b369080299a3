import { effectiveThreshold } from './effective.ts';
import { shiftFraction } from './shiftFraction.ts';

/**
 * How far the effective threshold lies from the intended one, T − m·S, in the unit of the setpoint: above 0 is late,
 * below 0 early. Inputs and range as `effectiveThreshold`; `NaN` otherwise. Source: definition.
 * Example: 5 mil at 200 configured, 160 measured → +1.25 mil.
 */
export function shift(setpoint: number, configured: number, measured: number, multiplier: number): number {
  const inRange = !Number.isNaN(effectiveThreshold(setpoint, configured, measured, multiplier));
  return inRange ? multiplier * setpoint * shiftFraction(configured, measured) : NaN;
}
