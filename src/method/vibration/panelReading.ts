import { positive, fraction } from '../range.ts';

/**
 * What the monitor shows when the shaft really moves `real`, real·Km/Kc, in the unit of `real` (0 or above). Both
 * sensitivities in one unit, above 0; `NaN` otherwise. Source: as `effectiveThreshold`.
 * Example: 5 mil real at 200 configured, 160 measured shows 4 mil.
 */
export function indicated(real: number, configured: number, measured: number): number {
  if (!(real >= 0 && real < Infinity) || !positive(configured) || !positive(measured)) return NaN;
  return (real * measured) / configured;
}

/**
 * Real vibration behind an indicated reading D, D·Kc/Km, in the unit of the reading (0 or above). Both sensitivities
 * in one unit, above 0; `NaN` otherwise. Source: inverse of `indicated`.
 * Example: 4 mil shown at 200 configured, 160 measured is 5 mil real.
 */
export function actual(reading: number, configured: number, measured: number): number {
  return indicated(reading, measured, configured);
}

/**
 * Real vibration left before a threshold acts, T − D·Kc/Km, in the unit of both: `effective` is the effective
 * threshold (`Infinity` where it cannot act), `reading` what the monitor shows now (0 or above). Below 0 the
 * threshold is already passed. Sensitivities in one unit, above 0; `NaN` otherwise. Source: definition.
 * Example: T 6.25 mil, 2 mil shown at 200 configured, 160 measured → 3.75 mil.
 */
export function headroom(effective: number, reading: number, configured: number, measured: number): number {
  return effective > 0 ? effective - actual(reading, configured, measured) : NaN;
}

/**
 * Panel reading that must be treated as the setpoint meant: what the monitor shows when the shaft really moves m·S, with
 * the whole uncertainty of Km counted against it, m·S·Km·(1 − U)/Kc, in the unit of the setpoint; not rounded. Setpoint,
 * multiplier and sensitivities above 0, `uncertainty` the expanded uncertainty as a fraction in [0, 1), 0 to count none;
 * `NaN` otherwise. Source: as `indicated`, at the lower end of the interval of Km.
 * Example: 5 mil at 200 configured, 160 measured, U 0.03 → 3.88 mil.
 */
export function panelLevel(
  setpoint: number,
  configured: number,
  measured: number,
  uncertainty: number,
  multiplier: number,
): number {
  if (!positive(setpoint) || !positive(multiplier) || !fraction(uncertainty)) return NaN;
  return indicated(multiplier * setpoint, configured, measured * (1 - uncertainty));
}
