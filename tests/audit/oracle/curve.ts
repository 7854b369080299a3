import { medianSorted } from 'simple-statistics';
import type { Points } from './facts.ts';

/** A calibration record as a curve; outside its gaps it has no voltage. */
export interface Curve {
  readonly from: number;
  readonly to: number;
  readonly voltsAt: (gap: number) => number;
  /** `null`: beyond the measured voltages. */
  readonly gapAt: (volts: number) => number | null;
}

export function curveOf(points: Points, how: 'monotone cubic' | 'linear'): Curve {
  const [from, to] = [points[0]![0], points.at(-1)![0]];
  const slopes = how === 'linear' ? null : fritschButland(points);
  const voltsAt = (gap: number): number => {
    if (gap < from || gap > to) return NaN;
    const after = points.findIndex(([one]) => one >= gap);
    const at = Math.max(after, 1);
    return slopes === null ? onLine(points, at, gap) : hermite(points, slopes, at, gap);
  };
  const gapAt = (volts: number): number | null => {
    if (volts > points[0]![1] || volts < points.at(-1)![1]) return null;
    return bisected((gap) => voltsAt(gap) <= volts, from, to);
  };
  return { from, to, voltsAt, gapAt };
}

function onLine(points: Points, at: number, gap: number): number {
  const [[g0, v0], [g1, v1]] = [points[at - 1]!, points[at]!];
  return v0 + ((gap - g0) * (v1 - v0)) / (g1 - g0);
}

function hermite(points: Points, slopes: readonly number[], at: number, gap: number): number {
  const [[g0, v0], [g1, v1]] = [points[at - 1]!, points[at]!];
  const h = g1 - g0;
  const x = (gap - g0) / h;
  return (
    v0 * (1 + 2 * x) * (1 - x) ** 2 +
    h * slopes[at - 1]! * x * (1 - x) ** 2 +
    v1 * x ** 2 * (3 - 2 * x) +
    h * slopes[at]! * x ** 2 * (x - 1)
  );
}

/** Fritsch–Butland slopes: weighted harmonic means with 2h_k + h_(k−1) and h_k + 2h_(k−1), three-point ends (NAG example). */
function fritschButland(points: Points): number[] {
  const steps = points.slice(1).map(([gap, volts], at) => {
    const [before, voltsBefore] = points[at]!;
    return { h: gap - before, slope: (volts - voltsBefore) / (gap - before) };
  });
  const inner = steps.slice(1).map((right, at) => {
    const left = steps[at]!;
    if (left.slope * right.slope <= 0) return 0;
    const [one, other] = [2 * right.h + left.h, right.h + 2 * left.h];
    return (one + other) / (one / left.slope + other / right.slope);
  });
  const reversed = steps.toReversed();
  return [endSlope(steps[0]!, steps[1]!), ...inner, endSlope(reversed[0]!, reversed[1]!)];
}

interface Step {
  readonly h: number;
  readonly slope: number;
}

function endSlope(outer: Step, next: Step): number {
  const slope = ((2 * outer.h + next.h) * outer.slope - outer.h * next.slope) / (outer.h + next.h);
  if (slope * outer.slope <= 0) return 0;
  const turns = outer.slope * next.slope <= 0;
  return turns && Math.abs(slope) > 3 * Math.abs(outer.slope) ? 3 * outer.slope : slope;
}

/** Where a condition that holds above some place begins to hold. */
function bisected(holds: (x: number) => boolean, from: number, to: number): number {
  let [low, high] = [from, to];
  for (let step = 0; step < 60; step++) {
    const middle = (low + high) / 2;
    if (holds(middle)) high = middle;
    else low = middle;
  }
  return (low + high) / 2;
}

/** Voltage swing of a peak-to-peak displacement about a gap, V; `null` where it leaves the measured gaps. */
export function swingOf(curve: Curve, gap: number, displacement: number): number | null {
  const swing = curve.voltsAt(gap - displacement / 2) - curve.voltsAt(gap + displacement / 2);
  return Number.isNaN(swing) ? null : swing;
}

/** Peak-to-peak displacement about a gap that gives a voltage swing; `null` where none inside the measured gaps does. */
export function displacementOf(curve: Curve, gap: number, swing: number): number | null {
  const most = 2 * Math.min(gap - curve.from, curve.to - gap);
  const widest = swingOf(curve, gap, most);
  if (widest === null || widest < swing) return null;
  return bisected((one) => (swingOf(curve, gap, one) ?? Infinity) >= swing, 0, most);
}

/** Tolerances of a straight part: API 670, ±5 % and ±1 mil (from memory). */
const [unevenness, mostMils] = [0.05, 1];

/**
 * The straight part: the longest run of steps about the operating gap, else the longest of all, whose sensitivities and
 * deviations from a line of the record's own median slope are within tolerance; without one, all that was measured.
 */
export function straightPart(
  points: Points,
  gap: number,
  perMil: number,
): readonly [from: number, to: number] {
  const slopesOf = (some: Points): number[] =>
    some.slice(1).map(([g, v], at) => (some[at]![1] - v) / (g - some[at]![0]));
  const own = medianSorted(slopesOf(points).toSorted((one, other) => one - other));
  const runs: (readonly [number, number])[] = [];
  for (let first = 0; first < points.length; first++) {
    for (let end = first + 2; end <= points.length; end++) {
      const run = points.slice(first, end);
      const offsets = run.map(([g, v]) => v + own * g);
      const deviation = (Math.max(...offsets) - Math.min(...offsets)) / 2 / own;
      const even = slopesOf(run).every((slope) => Math.abs(slope / own - 1) <= unevenness);
      if (even && deviation <= mostMils * perMil) runs.push([run[0]![0], run.at(-1)![0]]);
    }
  }
  const longest = runs.toSorted((one, other) => other[1] - other[0] - (one[1] - one[0]));
  const around = longest.find(([from, to]) => from <= gap && gap <= to);
  return around ?? longest[0] ?? [points[0]![0], points.at(-1)![0]];
}
