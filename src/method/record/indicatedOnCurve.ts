import { positive } from '../range.ts';
import type { Curve } from './curve.ts';

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
