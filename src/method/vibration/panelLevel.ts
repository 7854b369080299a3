import { fraction, positive } from '../range.ts';
import { indicated } from './indicated.ts';

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
