import { positive } from '../range.ts';
import { bracketedRoot } from '../bracketedRoot.ts';
import type { Curve } from './curve.ts';

/** What an axial channel on a measured curve is worked out from. Voltages in V, `configured` in V per gap unit. */
export interface AxialOnCurve {
  /** Signed, in the record's gap unit. */
  readonly setpoint: number;
  readonly configured: number;
  readonly zeroConfigured: number;
  readonly zeroMeasured: number;
  /** +1: towards the probe is positive; −1: away from it. */
  readonly sign: 1 | -1;
}

/** Where a setpoint acts on a measured curve, or, where that cannot be shown, the largest indication it supports. */
export type OnCurve = { readonly acts: number } | { readonly largestIndicated: number };

/**
 * Real peak-to-peak swing T at which a setpoint acts on a measured curve about an operating gap g0:
 * V(g0 − T/2) − V(g0 + T/2) = m·S·Kc. Setpoint (peak to peak) and multiplier above 0, the setpoint in the record's gap
 * unit; `configured` above 0 in V per gap unit; g0 in the gap unit. Where the measured gaps do not reach that far it
 * cannot be shown to act: the largest indicated value that they support, 0 for an operating gap outside them.
 * `undefined` out of range. Source: the monitor indicates the voltage swing ÷ Kc.
 * Example: a straight record of 0.16 V/mil, 5 mil at 0.2 V/mil configured → acts at 6.25 mil.
 */
export function thresholdOnCurve(
  curve: Curve,
  operatingGap: number,
  setpoint: number,
  configured: number,
  multiplier: number,
): OnCurve | undefined {
  if (!positive(setpoint) || !positive(configured) || !positive(multiplier)) return undefined;
  if (!Number.isFinite(operatingGap)) return undefined;
  const half = Math.min(operatingGap - curve.from, curve.to - operatingGap);
  if (!(half > 0)) return { largestIndicated: 0 };
  const swing = (reach: number): number =>
    curve.voltsAt(Math.max(operatingGap - reach, curve.from)) -
    curve.voltsAt(Math.min(operatingGap + reach, curve.to));
  const wanted = multiplier * setpoint * configured;
  const largest = swing(half);
  if (largest < wanted * (1 - 1e-12)) return { largestIndicated: largest / configured };
  if (largest <= wanted) return { acts: 2 * half };
  return { acts: 2 * bracketedRoot((reach) => swing(reach) - wanted, 0, half) };
}

/**
 * Real position at which a setpoint of an axial channel acts, on a measured curve: the monitor shows S at the voltage
 * V0c + s·S·Kc, and the shaft is then at s·(g(V0m) − g(V0c + s·S·Kc)) from its mechanical zero, g read from the curve.
 * In the record's gap unit, signed; `NaN` where a voltage lies outside the record or an input is out of range.
 * Source: P = s·(V − V0c)/Kc with the chain's own curve in place of its one sensitivity; for a straight record it is
 * (S·Kc + s·(V0c − V0m))/Km. Example: straight 0.16 V/mil, S 20 mil, Kc 0.2 V/mil, both zeros −10 V → 25 mil.
 */
export function axialOnCurve(curve: Curve, channel: AxialOnCurve): number {
  const { setpoint, configured, zeroConfigured, zeroMeasured, sign } = channel;
  if (!positive(configured) || !Number.isFinite(setpoint)) return NaN;
  const acting = zeroConfigured + sign * setpoint * configured;
  return sign * (curve.gapAt(zeroMeasured) - curve.gapAt(acting));
}

/**
 * Position that the monitor shows when the shaft really stands at `setpoint` from its mechanical zero, on a measured
 * curve: s·(V(g(V0m) − s·S) − V0c)/Kc, the inverse of `axialOnCurve`. In the record's gap unit, signed; `NaN` where the
 * record does not reach that position or its zero, and out of range. Source: as `axialOnCurve`.
 * Example: straight 0.16 V/mil, 20 mil real, Kc 0.2 V/mil, both zeros −10 V → shows 16 mil.
 */
export function axialIndicatedOnCurve(curve: Curve, channel: AxialOnCurve): number {
  const { setpoint, configured, zeroConfigured, zeroMeasured, sign } = channel;
  if (!positive(configured) || !Number.isFinite(setpoint)) return NaN;
  const volts = curve.voltsAt(curve.gapAt(zeroMeasured) - sign * setpoint);
  return (sign * (volts - zeroConfigured)) / configured;
}

/**
 * What the monitor shows when the shaft really swings `real` about an operating gap g0 on a measured curve,
 * (V(g0 − D/2) − V(g0 + D/2))/Kc: the inverse of `thresholdOnCurve`. Gaps, `real` (peak to peak, above 0) and the result in
 * the record's gap unit, `configured` above 0 in V per gap unit; `NaN` where the swing leaves the measured gaps and out of
 * range. Source: the monitor indicates the voltage swing ÷ Kc.
 * Example: a straight record of 0.16 V/mil, 5 mil real at 0.2 V/mil configured → shows 4 mil.
 */
export function indicatedOnCurve(
  curve: Curve,
  operatingGap: number,
  real: number,
  configured: number,
): number {
  if (!positive(real) || !positive(configured) || !Number.isFinite(operatingGap)) return NaN;
  return (curve.voltsAt(operatingGap - real / 2) - curve.voltsAt(operatingGap + real / 2)) / configured;
}
