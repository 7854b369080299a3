import { positive } from '../range.ts';

/**
 * How much later a threshold acts than intended when the vibration grows evenly, (T − S)/r, in the time unit of
 * `growth` (displacement unit per time, above 0). Below 0 it acts earlier; `Infinity` where T is infinite. Thresholds
 * above 0 in one unit; `NaN` otherwise. Source: uniform growth. Example: T 6.25, S 5 mil at 0.1 mil/day → 12.5 days.
 */
export function lateByLinear(effective: number, setpoint: number, growth: number): number {
  return effective > 0 && positive(setpoint) && positive(growth) ? (effective - setpoint) / growth : NaN;
}

/**
 * The same when the vibration doubles every `doublingTime` (above 0), τ·log2(T/S), whatever its level, in the unit of
 * `doublingTime`. Range and error as `lateByLinear`. Source: exponential growth. Example: T/S 1.25, 30 days → 9.66 days.
 */
export function lateByDoubling(effective: number, setpoint: number, doublingTime: number): number {
  if (!(effective > 0) || !positive(setpoint) || !positive(doublingTime)) return NaN;
  return doublingTime * Math.log2(effective / setpoint);
}
