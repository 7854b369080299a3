import { positive } from './range.ts';
import type { Ratio } from './ratio/ratio.ts';

/** What a loop current says before it says a value. */
type LoopSignal = 'failure' | 'undefined band' | 'measurement';

/** Currents of a loop's two ends in mA, what the monitor believes or what was measured. */
export interface LoopEnds {
  readonly at0: number;
  readonly at100: number;
}

/** What a monitor of a 4–20 mA loop takes for its ends. */
export const loopDefaults: LoopEnds = { at0: 4, at100: 20 };

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

/**
 * Reading of a current loop with measured end points, (I − I0)/(I100 − I0)·span, in the unit of `span` (above 0).
 * Currents in mA, the end points finite and different, in either order; `NaN` otherwise. A current outside the end
 * points reads outside the span. Source: straight line through the end points.
 * Example: 12 mA, span 20 mm/s, 4 and 20 mA → 10 mm/s.
 */
export function loopReading(current: number, span: number, at0: number, at100: number): number {
  if (!Number.isFinite(current) || !Number.isFinite(at0) || !Number.isFinite(at100)) return NaN;
  return positive(span) && at0 !== at100 ? ((current - at0) / (at100 - at0)) * span : NaN;
}

/**
 * Meaning of a loop current in mA: at most 3.6 or at least 21 a failure, 3.8 to 20.5 a measurement, between them
 * neither. `undefined` where the current is not a number. Source: NAMUR NE 43 (3.6 and 21 second-hand, 3.8 and 20.5
 * from memory). Example: 3.5 mA → failure.
 */
export function loopSignal(current: number): LoopSignal | undefined {
  if (Number.isNaN(current)) return undefined;
  if (current <= 3.6 || current >= 21) return 'failure';
  return current >= 3.8 && current <= 20.5 ? 'measurement' : 'undefined band';
}
