import { positive } from '../range.ts';

/**
 * Shift of a threshold as a fraction of the intended one, Kc/Km − 1: not the negative of the sensitivity error.
 * Both in one unit, above 0; `NaN` otherwise. Source: arithmetic on `effectiveThreshold`.
 * Example: a sensitivity 20 % low (200 → 160) makes every threshold 25 % late, +0.25.
 */
export function shiftFraction(configured: number, measured: number): number {
  return positive(configured) && positive(measured) ? (configured - measured) / measured : NaN;
}
