import { positive } from '../range.ts';

/**
 * Shop acceptance limit of a compressor's shaft vibration, 25.4·√(12000/n), in µm p-p, at a speed in r/min, not above
 * `cap` (µm p-p; `null`: no cap, since sources disagree on it). Speed and cap above 0; `NaN` otherwise.
 * Source: API 617, second-hand. Example: 48000 r/min → 12.7 µm.
 */
export function compressorLimit(speed: number, cap: number | null): number {
  if (!positive(speed) || (cap !== null && !positive(cap))) return NaN;
  const limit = 25.4 * Math.sqrt(12_000 / speed);
  return cap === null ? limit : Math.min(limit, cap);
}
