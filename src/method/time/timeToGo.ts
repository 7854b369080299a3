import { positive } from '../range.ts';

/**
 * Time until evenly growing vibration reaches a threshold, (T − D0)/r, in the time unit of `growth` (displacement unit
 * per time, above 0). `level` is the real vibration now, 0 or above, in the unit of T. 0 where T is passed already,
 * `Infinity` where T is infinite; `NaN` out of range. Source: uniform growth.
 * Example: T 6.25, now 2 mil at 0.1 mil/day → 42.5 days.
 */
export function timeToGoLinear(effective: number, level: number, growth: number): number {
  if (!(effective > 0) || !(level >= 0 && level < Infinity) || !positive(growth)) return NaN;
  return Math.max(0, (effective - level) / growth);
}

/**
 * The same when the vibration doubles every `doublingTime` (above 0), τ·log2(T/D0), in the unit of `doublingTime`; the
 * level above 0. Range and error as `timeToGoLinear`. Source: exponential growth.
 * Example: T 8, now 2 mil, doubling in 30 days → 60 days.
 */
export function timeToGoDoubling(effective: number, level: number, doublingTime: number): number {
  if (!(effective > 0) || !positive(level) || !positive(doublingTime)) return NaN;
  return Math.max(0, doublingTime * Math.log2(effective / level));
}
