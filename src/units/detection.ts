import type { Detection } from './unit.ts';

/** Peak-to-peak size of a sinusoid whose size in this detection is 1. */
const PEAK_TO_PEAK: Readonly<Record<Detection, number>> = { 'p-p': 1, '0-p': 2, rms: 2 * Math.SQRT2 };

/**
 * A size in another detection, exact for a sinusoid alone: p-p = 2 × 0-p, 0-p = √2 × rms. Any number in any unit.
 * Source: definition of the sinusoid's amplitude and mean square.
 */
export function convertDetection(value: number, from: Detection, to: Detection): number {
  return from === to ? value : (value * PEAK_TO_PEAK[from]) / PEAK_TO_PEAK[to];
}
