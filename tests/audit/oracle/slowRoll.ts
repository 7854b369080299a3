import { divisorOf } from './lines.ts';
import type { ChannelFacts, Evidence, Vector } from './facts.ts';
import type { ThresholdName, ThresholdTruth } from './judge.ts';

/** What the runout of a channel means (section 20). */
export interface SlowRollTruth {
  readonly measuredThen: number;
  /** Real, as all below. */
  readonly real: number;
  readonly compensated: Vector | null;
  readonly thresholds: readonly {
    readonly name: ThresholdName;
    readonly multiplier: number;
    /** At the angle of the present component. */
    readonly real: number | null;
    readonly least: number | null;
    readonly most: number | null;
  }[];
}

type Point = readonly [x: number, y: number];

function pointOf({ amplitude, phase }: Vector, times: number): Point {
  const angle = (phase * Math.PI) / 180;
  return [times * amplitude * Math.cos(angle), times * amplitude * Math.sin(angle)];
}

export function slowRollOf(
  c: ChannelFacts,
  e: Evidence,
  thresholds: readonly ThresholdTruth[],
): SlowRollTruth | null {
  const { slowRoll } = c;
  if (slowRoll === null || c.kind !== 'radial' || e.sensitivity === null) return null;
  const kc = divisorOf(c);
  const then = slowRoll.sensitivityThen ?? e.sensitivity;
  const runout = (slowRoll.amplitude * kc) / then;
  const { phase, now } = slowRoll;
  const [x, y] = now === null ? [NaN, NaN] : pointOf(now, kc / e.sensitivity);
  const [rx, ry] = phase === null ? [NaN, NaN] : pointOf({ amplitude: runout, phase }, 1);
  const moved: Point | null = Number.isNaN(x + rx) ? null : [x - rx, y - ry];
  return {
    measuredThen: then,
    real: runout,
    compensated: moved && { amplitude: Math.hypot(...moved), phase: degrees(moved) },
    thresholds: thresholds.flatMap(({ name, multiplier, effective }) => {
      if (effective === null) return [];
      const known = runout <= effective;
      return [
        {
          name,
          multiplier,
          real: known && moved ? along(moved, [rx, ry], effective) : null,
          least: known ? effective - runout : null,
          most: known ? effective + runout : null,
        },
      ];
    }),
  };
}

function degrees([x, y]: Point): number {
  const angle = (Math.atan2(y, x) * 180) / Math.PI;
  return angle < 0 ? angle + 360 : angle;
}

/** How far the shaft moves in that direction until movement and runout together are as large as the threshold: by halving. */
function along(moved: Point, [rx, ry]: Point, threshold: number): number {
  const size = Math.hypot(...moved);
  const [ux, uy] = [moved[0] / size, moved[1] / size];
  let [low, high] = [0, 4 * threshold];
  for (let step = 0; step < 200; step++) {
    const middle = (low + high) / 2;
    if (Math.hypot(rx + middle * ux, ry + middle * uy) < threshold) low = middle;
    else high = middle;
  }
  return high;
}
