import { positive } from '../range.ts';
import { roundToEarlySide } from '../roundToEarlySide.ts';
import { indicated } from './panelReading.ts';

/**
 * Effective threshold: the real vibration at which a setpoint acts, T = m·S·Kc/Km, in the unit and detection of the
 * setpoint. All inputs above 0, both sensitivities in one unit; `NaN` otherwise. Source: the monitor divides the
 * chain's voltage swing by the configured sensitivity. Example: 5 mil at 200 configured, 160 measured → 6.25 mil.
 */
export function effectiveThreshold(
  setpoint: number,
  configured: number,
  measured: number,
  multiplier: number,
): number {
  if (!positive(setpoint) || !positive(configured) || !positive(measured) || !positive(multiplier))
    return NaN;
  return (multiplier * setpoint * configured) / measured;
}

/**
 * How far the effective threshold lies from the intended one, T − m·S, in the unit of the setpoint: above 0 is late,
 * below 0 early. Inputs and range as `effectiveThreshold`; `NaN` otherwise. Source: definition.
 * Example: 5 mil at 200 configured, 160 measured → +1.25 mil.
 */
export function shift(setpoint: number, configured: number, measured: number, multiplier: number): number {
  const inRange = !Number.isNaN(effectiveThreshold(setpoint, configured, measured, multiplier));
  return inRange ? multiplier * setpoint * shiftFraction(configured, measured) : NaN;
}

/**
 * Shift of a threshold as a fraction of the intended one, Kc/Km − 1: not the negative of the sensitivity error.
 * Both in one unit, above 0; `NaN` otherwise. Source: arithmetic on `effectiveThreshold`.
 * Example: a sensitivity 20 % low (200 → 160) makes every threshold 25 % late, +0.25.
 */
export function shiftFraction(configured: number, measured: number): number {
  return positive(configured) && positive(measured) ? (configured - measured) / measured : NaN;
}

/**
 * Setpoint that would act at the intended real vibration while the chain is not corrected, S·Km/Kc, rounded down to
 * the monitor's resolution (`null`: not rounded), in the unit of the setpoint. Setpoint and sensitivities above 0,
 * resolution above 0; `NaN` otherwise, and where even one step of the resolution would act late: a setpoint of 0 acts
 * at rest and is none to offer. Source: as `indicated`; rounding to the early side so that it never acts later than intended.
 * Example: 5 mil at 200 configured, 160 measured, steps of 0.1 mil → 4 mil.
 */
export function interimSetpoint(
  setpoint: number,
  configured: number,
  measured: number,
  resolution: number | null,
): number {
  if (!positive(setpoint)) return NaN;
  const exact = indicated(setpoint, configured, measured);
  const offered = resolution === null ? exact : roundToEarlySide(exact, resolution);
  return offered > 0 ? offered : NaN;
}
