import { linearReach } from '../reach/linearReach.ts';
import type { LinearRange } from './linearRange.ts';

/**
 * Largest peak-to-peak swing about an operating gap that stays inside the linear range of its record, in the record's
 * gap unit; 0 where the gap lies outside the range, `NaN` where it is no number. A threshold beyond it is out of reach.
 * Source: as `linearReach`. Example: gap 50 in a linear range of 10 to 80 mil → 60 mil.
 */
export function recordReach({ from, to }: LinearRange, operatingGap: number): number {
  return linearReach(operatingGap, from, to);
}
