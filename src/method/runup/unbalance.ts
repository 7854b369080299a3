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

/** Where the response is greatest, as a ratio of speeds, and its amplitude there. */
export interface ResponsePeak {
  readonly ratio: number;
  readonly amplitude: number;
}

/**
 * The peak of `unbalanceResponse`: e/(2ζ√(1 − ζ²)) at r = 1/√(1 − 2ζ²); damping below 1/√2, else there is none and both
 * are `NaN`. Source: derivation. Example: e 1.2, ζ 0.1 → 6.030 at 1.0102.
 */
export function unbalancePeak(eccentricity: number, damping: number): ResponsePeak {
  const square = damping * damping;
  if (!positive(eccentricity) || !positive(damping) || !(square < 0.5)) return { ratio: NaN, amplitude: NaN };
  return {
    ratio: 1 / Math.sqrt(1 - 2 * square),
    amplitude: eccentricity / (2 * damping * Math.sqrt(1 - square)),
  };
}

/**
 * Ratios of speeds at which the response crosses an amplitude, in order: two below the peak, one below the eccentricity
 * itself, none above the peak. Range as `unbalanceResponse`. Source: (T² − e²)q² + T²(4ζ² − 2)q + T² = 0, r = √q.
 * Example: e 1.2, ζ 0.1, T 5 → 0.9474, 1.0873.
 */
export function unbalanceCrossings(eccentricity: number, damping: number, amplitude: number): number[] {
  if (!positive(eccentricity) || !positive(damping) || !positive(amplitude)) return [];
  // In p = 1/q it is T²p² + T²(4ζ² − 2)p + T² − e² = 0, whose leading term never vanishes.
  const half = 1 - 2 * damping * damping;
  const rest = half * half - 1 + (eccentricity / amplitude) ** 2;
  if (!(rest >= 0)) return [];
  return [half + Math.sqrt(rest), half - Math.sqrt(rest)].filter((p) => p > 0).map((p) => 1 / Math.sqrt(p));
}
