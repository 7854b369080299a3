import { positive } from './range.ts';

/** Ends of a gap voltage swing in V: `nearest` the probe (less negative) and `farthest` from it. */
export interface Swing {
  readonly nearest: number;
  readonly farthest: number;
}

/**
 * Gap voltages that the swing at a vibration setpoint reaches, V0 ± m·S·Kc/2, in V. `setpoint` peak-to-peak in the
 * displacement unit of `configured` (mV per unit); they and the multiplier above 0, the gap voltage finite; both `NaN`
 * otherwise. Source: definition of the configured sensitivity. Example: −10 V, 5 mil, 200 mV/mil → −9.5 V and −10.5 V.
 */
export function swing(gapVoltage: number, setpoint: number, configured: number, multiplier: number): Swing {
  if (!Number.isFinite(gapVoltage) || !positive(setpoint) || !positive(configured) || !positive(multiplier)) {
    return { nearest: NaN, farthest: NaN };
  }
  const half = (multiplier * setpoint * configured) / 2000;
  return { nearest: gapVoltage + half, farthest: gapVoltage - half };
}

/**
 * Whether that swing leaves the monitor's circuit-fault limits (V, in either order), so that the channel may be marked
 * faulty before it can trip; touching a limit is not leaving it. `undefined` where an input is out of range. Many
 * monitors judge the filtered gap voltage instead, so it is a caution and no verdict (common practice, no source).
 */
export function leavesFaultLimits(
  gapVoltage: number,
  setpoint: number,
  configured: number,
  multiplier: number,
  one: number,
  other: number,
): boolean | undefined {
  const { nearest, farthest } = swing(gapVoltage, setpoint, configured, multiplier);
  if (Number.isNaN(nearest) || Number.isNaN(one) || Number.isNaN(other)) return undefined;
  return nearest > Math.max(one, other) || farthest < Math.min(one, other);
}

/**
 * Largest peak-to-peak swing about a gap that stays inside the linear range [from, to], max(0, 2·min(g0 − from,
 * to − g0)). All gaps in one unit, `from` < `to`, finite; `NaN` otherwise; 0 where the gap lies outside the range.
 * Source: geometry. Example: gap 50 in 10 to 90 mil → 80 mil.
 */
export function linearReach(gap: number, from: number, to: number): number {
  if (!Number.isFinite(gap) || !Number.isFinite(from) || !Number.isFinite(to) || from >= to) return NaN;
  return Math.max(0, 2 * Math.min(gap - from, to - gap));
}

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
