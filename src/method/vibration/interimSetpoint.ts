import { roundToEarlySide } from '../roundToEarlySide.ts';
import { positive } from '../range.ts';
import { indicated } from './indicated.ts';

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
