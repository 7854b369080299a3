import { positive } from '../range.ts';

/**
 * Amplitude of a rotor with unbalance, e·r²/√((1 − r²)² + (2ζr)²), r = speed over critical speed: a generator of run-ups.
 * All above 0; `NaN` otherwise. In the unit of `eccentricity`. Source: textbooks (from memory). Example: e 1.2, ζ 0.1 at
 * r = 1.0102 → 6.030, the peak.
 */
export function unbalanceResponse(eccentricity: number, damping: number, ratio: number): number {
  if (!positive(eccentricity) || !positive(damping) || !positive(ratio)) return NaN;
  const q = 1 / ratio;
  return eccentricity / Math.hypot((q - 1) * (q + 1), 2 * damping * q);
}
