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

/**
 * A level as it is said to people who act on it: rounded towards zero to the instrument's resolution, or to two significant
 * digits where none is given (`null`). Value finite, resolution above 0; `NaN` otherwise. Source: common practice, no source.
 * Example: 3.88 in steps of 0.1 → 3.8; 3.88 without a resolution → 3.8; 158 without → 150.
 */
export function roundToPanelStep(value: number, resolution: number | null): number {
  if (resolution !== null) return roundToEarlySide(value, resolution);
  if (value === 0 || !Number.isFinite(value)) return value === 0 ? 0 : NaN;
  return roundToEarlySide(value, 10 ** (Math.floor(Math.log10(Math.abs(value))) - 1));
}
