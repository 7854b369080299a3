import type { ThresholdVerdict } from '../../audit/model/threshold.ts';
import { ticks } from 'd3-array';

/** One threshold on the scale of real displacement (or of whatever the channel measures). */
export interface Lane {
  readonly name: string;
  /** What it does when it acts. */
  readonly acts: 'trips' | 'alarms';
  readonly intended: number | null;
  /** `null`: it can't be told, or it can't act. */
  readonly effective: number | null;
  readonly low: number | null;
  readonly high: number | null;
  readonly verdict: ThresholdVerdict;
}

export interface SceneInput {
  readonly unit: string;
  /** Step of the instrument, by which numbers are shown; `null` where none is known. */
  readonly step?: number | null;
  readonly lanes: readonly Lane[];
  readonly limit: number | null;
  /** Largest real swing inside the linear span, from 0. */
  readonly reach: number | null;
  /** Present real level. */
  readonly reading: number | null;
}

/** What is drawn: values in one unit on one scale that runs from `from` to `to`. */
export interface Scene extends SceneInput {
  readonly from: number;
  readonly to: number;
  readonly ticks: readonly number[];
}

/** Room left beside the outermost value, as a part of the scale. */
const margin = 0.08;

/**
 * The scale that shows every threshold, band, limit and the reading, with 0 always on it. The linear reach does not
 * widen it: it is usually many times the thresholds, and a drawing says so by an arrow. `null` where no value is known.
 */
export function sceneOf(input: SceneInput): Scene | null {
  const values = [
    ...input.lanes.flatMap(({ intended, effective, low, high }) => [intended, effective, low, high]),
    input.limit,
    input.reading,
  ].filter((value): value is number => value !== null && Number.isFinite(value));
  if (values.length === 0) return null;
  const least = Math.min(0, ...values);
  const most = Math.max(0, ...values);
  if (least === most) return null;
  const room = margin * (most - least);
  const from = least < 0 ? least - room : 0;
  const to = most > 0 ? most + room : 0;
  return { ...input, from, to, ticks: ticks(from, to, 5) };
}

/** Where a value stands between two edges of a drawing; a value off the scale stands on the nearer edge. */
export function positionOf({ from, to }: Scene, value: number, left: number, right: number): number {
  const part = Math.min(1, Math.max(0, (value - from) / (to - from)));
  return left + part * (right - left);
}
