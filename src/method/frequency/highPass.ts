import { positive } from '../range.ts';

/**
 * Response of a second-order high-pass (a seismic sensor) against that far above its corner: r²/√((1 − r²)² + (2ζr)²), r =
 * frequency/corner. Both in one unit, above 0, damping ratio ζ above 0; `NaN` otherwise. Source: vibration textbooks (two
 * worked examples read). Example: 10 corners up, ζ 0.2 → 1.0093.
 */
export function highPass(frequency: number, corner: number, damping: number): number {
  if (!positive(frequency) || !positive(corner) || !positive(damping)) return NaN;
  const q = corner / frequency;
  return 1 / Math.hypot((q - 1) * (q + 1), 2 * damping * q);
}
