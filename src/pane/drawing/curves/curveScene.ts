import { extent, ticks } from 'd3-array';

/** A point of a curve; `null` where it is not known. */
export type CurvePoint = readonly [at: number, value: number | null];

/** What the monitor showed, what was really there, and the setpoint, over time or speed. */
export interface Curves {
  readonly title: string;
  /** All of it in words, for those who don’t see it. */
  readonly words: string;
  readonly acrossName: string;
  readonly unit: string;
  readonly shown: readonly CurvePoint[];
  readonly real: readonly CurvePoint[];
  readonly setpoint: readonly CurvePoint[];
  /** Where it acted and where it should have; `null` where it did not. */
  readonly acted: number | null;
  readonly should: number | null;
}

interface CurveAxis {
  readonly from: number;
  readonly to: number;
  readonly ticks: readonly number[];
}

export interface CurveScene extends Curves {
  readonly x: CurveAxis;
  readonly y: CurveAxis;
}

/** Axes that show all of the curves, 0 among the levels; `null` where there is nothing to draw. */
export function curveScene(curves: Curves): CurveScene | null {
  const all = [...curves.shown, ...curves.real, ...curves.setpoint];
  const marks = [curves.acted, curves.should].flatMap((mark) => mark ?? []);
  const [left = NaN, right = NaN] = extent([...all.map(([at]) => at), ...marks]);
  const [low = NaN, high = NaN] = extent([0, ...all.flatMap(([, value]) => value ?? [])]);
  if (!(left < right) || !(low < high)) return null;
  const room = 0.08 * (high - low);
  const [bottom, top] = [low < 0 ? low - room : 0, high + room];
  return {
    ...curves,
    x: { from: left, to: right, ticks: ticks(left, right, 5) },
    y: { from: bottom, to: top, ticks: ticks(bottom, top, 4) },
  };
}

/** A curve in pieces, broken where a point is not known. */
export function piecesOf(points: readonly CurvePoint[]): (readonly [number, number])[][] {
  const pieces: (readonly [number, number])[][] = [[]];
  for (const [at, value] of points) {
    if (value === null) pieces.push([]);
    else pieces.at(-1)?.push([at, value]);
  }
  return pieces.filter((piece) => piece.length > 0);
}
