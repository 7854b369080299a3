import { positive } from '../range.ts';
import type { Ratio } from '../ratio/ratio.ts';

/** Currents of a loop's two ends in mA, what the monitor believes or what was measured. */
export interface LoopEnds {
  readonly at0: number;
  readonly at100: number;
}

/**
 * Real reading at which a setpoint acts when the ends of the loop are not where the monitor believes them: the current at
 * the setpoint, I0′ + (I100′ − I0′)·S/span, read with the measured ends. In the unit of setpoint and span, both above 0;
 * below 0 it acts at rest. The ends finite, different, and running the same way in both; `NaN` otherwise. Source: two
 * straight lines. Example: 7.1 of 20 mm/s, ends 4.05 and 19.8 mA for 4 and 20 → 7.149 mm/s.
 */
export function loopEffective(
  setpoint: number,
  span: number,
  measured: LoopEnds,
  believed: LoopEnds,
): number {
  const { a, b } = loopRatio(setpoint, span, measured, believed, 0, 0);
  return a / b;
}

/**
 * The same as a ratio, for its interval and probabilities: span·(I_S − I0) over I100 − I0, with the standard uncertainties
 * of the two measured ends in mA; both share I0. Its parts are `NaN` for an input out of range. Source: as above.
 */
export function loopRatio(
  setpoint: number,
  span: number,
  { at0, at100 }: LoopEnds,
  believed: LoopEnds,
  u0: number,
  u100: number,
): Ratio {
  const [width, ideal] = [at100 - at0, believed.at100 - believed.at0];
  const sound = positive(setpoint) && positive(span) && width * ideal > 0 && Number.isFinite(width * ideal);
  const side = sound ? Math.sign(width) : NaN;
  return {
    a: side * span * (believed.at0 + (ideal * setpoint) / span - at0),
    b: side * width,
    ua: span * u0,
    ub: Math.hypot(u0, u100),
    uab: span * u0 * u0,
  };
}

/**
 * Standard uncertainty of a loop's effective setpoint, span/B·√(((1 − x)·u0)² + (x·u100)²), x = T/span, in the unit of the
 * span. Range as `loopEffective`; `NaN` otherwise. Source: law of propagation. Example: 7.149 of 20 mm/s, 0.02 mA at
 * both ends of 15.75 mA → 0.01867 mm/s.
 */
export function loopUncertainty(
  effective: number,
  span: number,
  { at0, at100 }: LoopEnds,
  u0: number,
  u100: number,
): number {
  const x = effective / span;
  return (span / Math.abs(at100 - at0)) * Math.hypot((1 - x) * u0, x * u100);
}
