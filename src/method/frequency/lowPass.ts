import { positive } from '../range.ts';

/**
 * Response of a first-order low-pass (a long cable, a filter) against that far below its corner: 1/√(1 + r²), r =
 * frequency/corner, both in one unit, above 0; `NaN` otherwise. Source: vibration textbooks. Example: at a third of the
 * corner → 0.9487.
 */
export function lowPass(frequency: number, corner: number): number {
  if (!positive(frequency) || !positive(corner)) return NaN;
  return 1 / Math.hypot(1, frequency / corner);
}
