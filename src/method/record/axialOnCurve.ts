import { positive } from '../range.ts';
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
