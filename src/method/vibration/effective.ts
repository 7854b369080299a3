import { positive } from '../range.ts';

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
