import { positive } from '../range.ts';

/**
 * Sensitivity that a monitor really divides by when its own gain is off, Kc/g, in the unit of `configured`.
 * `gain` is indicated/injected for a known injected signal, 1 being perfect. Both above 0; `NaN` otherwise.
 * Source: the gain multiplies the reading. Example: 200 at a gain of 0.98 → 204.08.
 */
export function configuredFromGain(configured: number, gain: number): number {
  return positive(configured) && positive(gain) ? configured / gain : NaN;
}
