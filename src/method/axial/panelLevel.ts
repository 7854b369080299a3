import { fraction } from '../range.ts';
import type { Direction } from './direction.ts';
import { axialIndicated } from './indicated.ts';

/**
 * Position on the panel that must be treated as the setpoint meant: what the monitor shows when the shaft really stands
 * at `setpoint`, with the whole uncertainty of Km counted against it. Signed, not rounded; `NaN` where it falls on zero
 * or its other side, so that no reading of this direction stands for it. Inputs, units and range as `axialIndicated`,
 * the setpoint not 0; `uncertainty` a fraction in [0, 1), 0 to count none. Source: as `axialIndicated`.
 * Example: 20 mil toward, 200 configured, 160 measured, one zero, U 0.03 → 15.52 mil.
 */
export function axialPanelLevel(
  setpoint: number,
  configured: number,
  measured: number,
  zeroConfigured: number,
  zeroMeasured: number,
  direction: Direction,
  uncertainty: number,
): number {
  if (!fraction(uncertainty)) return NaN;
  const least = measured * (1 - uncertainty);
  const shown = axialIndicated(setpoint, configured, least, zeroConfigured, zeroMeasured, direction);
  return shown * Math.sign(setpoint) > 0 ? shown : NaN;
}
