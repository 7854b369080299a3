import { positive } from './range.ts';

/** A value this close to a step, in steps and relative to their number, is on it: it is floating-point noise. */
const NOISE = 1e-12;

/**
 * A value as a whole multiple of `resolution`, both in one unit, rounded towards zero: the side on which a setpoint
 * acts early. The value finite and of any sign, the resolution above 0; `NaN` otherwise. Source: common practice, no
 * source. Example: 4.37 in steps of 0.1 → 4.3; 0.30000000000000004 → 0.3.
 */
export function roundToEarlySide(value: number, resolution: number): number {
  if (!Number.isFinite(value) || !positive(resolution)) return NaN;
  const steps = value / resolution;
  const nearest = Math.round(steps);
  const onStep = Math.abs(steps - nearest) <= NOISE * Math.max(1, Math.abs(steps));
  const whole = onStep ? nearest : Math.trunc(steps);
  return whole === 0 ? 0 : Number((whole * resolution).toPrecision(15));
}
