import { positive } from '../range.ts';
import { linearReach } from './linearReach.ts';

/**
 * Largest peak-to-peak swing that stays inside a linear span of gap voltages, where no calibration record says more:
 * 2·min(|V0 − near|, |far − V0|)/Km, in the displacement unit of `measured` (mV per unit, above 0); voltages in V, the
 * two ends different and in either order. 0 where the gap voltage lies outside the span; `NaN` out of range.
 * Source: common practice, no source (−2 V to −18 V at a −24 V supply). Example: −10 V, −2 to −18 V, 200 mV/mil → 80 mil.
 */
export function voltReach(gapVoltage: number, near: number, far: number, measured: number): number {
  if (!positive(measured)) return NaN;
  return (1000 * linearReach(gapVoltage, Math.min(near, far), Math.max(near, far))) / measured;
}
