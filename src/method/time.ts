import { positive } from './range.ts';

/**
 * Real vibration when the relay acts after its delay, growing evenly meanwhile, T + r·d, in the unit of T. `growth`
 * (per time) and `delay` (the same time unit) 0 or above; `Infinity` where T is infinite; `NaN` out of range.
 * Source: the value must stay beyond the limit for the delay (on-delay, ISA-18.2 / IEC 62682 terms, second-hand).
 * Example: T 6.25 mil at 0.5 mil/s with a delay of 3 s → 7.75 mil.
 */
export function levelAtTripLinear(effective: number, growth: number, delay: number): number {
  if (!(effective > 0) || !notNegative(growth) || !notNegative(delay)) return NaN;
  return effective + growth * delay;
}

/**
 * The same while the vibration doubles every `doublingTime` (above 0, in the unit of `delay`), T·2^(d/τ).
 * Range, error and source as `levelAtTripLinear`. Example: T 6 mil, doubling in 3 s, delay 3 s → 12 mil.
 */
export function levelAtTripDoubling(effective: number, doublingTime: number, delay: number): number {
  if (!(effective > 0) || !positive(doublingTime) || !notNegative(delay)) return NaN;
  return effective * 2 ** (delay / doublingTime);
}

function notNegative(value: number): boolean {
  return value >= 0 && value < Infinity;
}

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
