import { positive } from '../range.ts';
import type { AxialOnCurve } from './axialOnCurve.ts';
import type { Curve } from './curve.ts';

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
