import { positive } from '../range.ts';
import { bracketedRoot } from '../bracketedRoot.ts';
import type { Curve } from './curve.ts';

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
