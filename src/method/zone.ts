import { positive } from './range.ts';

/** Evaluation zones of shaft vibration, A the best. */
export type Zone = 'A' | 'B' | 'C' | 'D';
export type ZoneBoundary = 'A/B' | 'B/C' | 'C/D';

/** ISO 7919-3 / ISO 20816-3 (second-hand): the boundary is this number over √n, in µm p-p with n in r/min. */
const OVER_ROOT_SPEED: Readonly<Record<ZoneBoundary, number>> = { 'A/B': 4800, 'B/C': 9000, 'C/D': 13_200 };

/**
 * Zone boundary of shaft vibration relative to the bearing, in µm p-p, at a speed in r/min (above 0; `NaN` otherwise).
 * Source: ISO 7919-3 / ISO 20816-3, second-hand. Example: 3600 r/min → 80, 150, 220 µm.
 */
export function zoneLimit(boundary: ZoneBoundary, speed: number): number {
  return positive(speed) ? OVER_ROOT_SPEED[boundary] / Math.sqrt(speed) : NaN;
}

/**
 * Zone of a shaft vibration in µm p-p (0 or above; `Infinity` is in D) at a speed in r/min (above 0); a value on a
 * boundary belongs to the better zone. `undefined` out of range. Source: as `zoneLimit`.
 * Example: 127 µm at 3600 r/min → B.
 */
export function zone(displacement: number, speed: number): Zone | undefined {
  if (!(displacement >= 0) || !positive(speed)) return undefined;
  if (displacement <= zoneLimit('A/B', speed)) return 'A';
  if (displacement <= zoneLimit('B/C', speed)) return 'B';
  return displacement <= zoneLimit('C/D', speed) ? 'C' : 'D';
}

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
