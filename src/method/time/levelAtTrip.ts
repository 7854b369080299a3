import { positive } from '../range.ts';

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
