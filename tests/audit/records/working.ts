import { linearRegression, mean, medianSorted } from 'simple-statistics';
import type { PlannedChannel, PlannedRecord, Points } from './plan.ts';

/**
 * A second working of what a record says, from the formulas and nothing of the project: gaps in µm, volts in V. Least
 * squares: simple-statistics, and the uncertainty of the slope by JCGM 100:2008 H.3, s/√Σ(x − x̄)². Piecewise-linear
 * curve, read backwards and at thresholds by bisection.
 */
export interface Worked {
  readonly record: PlannedRecord;
  /** V per µm. */
  readonly average: number;
  /** Whether all of the record is straight; of several runs of one length either may be taken for the straight part. */
  readonly whole: boolean;
  readonly averageUncertainty: number;
  readonly incremental: readonly number[];
  /** Off the line of rated slope laid amid the points from one gap to another, µm: of runs equally long either may be straight. */
  readonly deviations: (from: number, to: number) => readonly number[];
  readonly operatingGap: number | null;
}

/** 200 mV/mil, the rated sensitivity of displacement chains (common practice, no source), in V per µm. */
const rated = 0.2 / 25.4;
/** API 670, ±5 % and ±1 mil (from memory). */
const [tolerance, mostDeviation] = [0.05, 25.4];

export function work({ records, gapVoltage }: PlannedChannel): Worked {
  const rank = ({ series }: PlannedRecord): number => (series === 'as left' ? 1 : 0);
  const slope = ({ points }: PlannedRecord): number => -linearRegression(copy(points)).m;
  const record = records.toSorted((one, other) => rank(one) - rank(other) || slope(one) - slope(other))[0]!;
  const { points } = record;
  const steps = stepsOf(points);
  const operatingGap = gapAt(points, gapVoltage);
  const run = straightRun(points, operatingGap);
  const fitted = run.length >= 3 ? run : points;
  const { m, b } = linearRegression(copy(fitted));
  const centre = mean(fitted.map(([gap]) => gap));
  const squares = fitted.reduce((sum, [gap, volts]) => sum + (volts - b - m * gap) ** 2, 0);
  const spread = fitted.reduce((sum, [gap]) => sum + (gap - centre) ** 2, 0);
  return {
    record,
    average: -m,
    whole: run.length === points.length,
    averageUncertainty: Math.sqrt(squares / (fitted.length - 2) / spread),
    incremental: steps,
    deviations: (from, to) => deviations(points, from, to),
    operatingGap,
  };
}

/** The line of rated slope lies amid the straight part, so that a bent end marks itself alone as out. */
function deviations(points: Points, from: number, to: number): readonly number[] {
  const offset = ([gap, volts]: Points[number]): number => volts + rated * gap;
  const slack = 1e-6;
  const offsets = points.filter(([gap]) => gap >= from - slack && gap <= to + slack).map(offset);
  const middle = (Math.max(...offsets) + Math.min(...offsets)) / 2;
  return points.map((point) => (offset(point) - middle) / rated);
}

function copy(points: Points): number[][] {
  return points.map((point) => [...point]);
}

function stepsOf(points: Points): number[] {
  return points.slice(1).map(([gap, volts], at) => {
    const [gapBefore, voltsBefore] = points[at]!;
    return (voltsBefore - volts) / (gap - gapBefore);
  });
}

/** Every run of points is tried: the longest straight one about the median of the steps, with the operating gap first. */
function straightRun(points: Points, operatingGap: number | null): Points {
  const own = medianSorted(stepsOf(points).toSorted((one, other) => one - other));
  const straight: Points[] = [];
  for (let first = 0; first < points.length; first++) {
    for (let end = first + 2; end <= points.length; end++) {
      const run = points.slice(first, end);
      const offsets = run.map(([gap, volts]) => volts + own * gap);
      const half = (Math.max(...offsets) - Math.min(...offsets)) / 2 / own;
      const even = stepsOf(run).every((step) => Math.abs(step / own - 1) <= tolerance);
      if (even && half <= mostDeviation) straight.push(run);
    }
  }
  const length = (run: Points): number => run.at(-1)![0] - run[0]![0];
  const longest = (runs: readonly Points[]): Points | undefined =>
    runs.toSorted((one, other) => length(other) - length(one))[0];
  const around = straight.filter(
    (run) => operatingGap !== null && operatingGap >= run[0]![0] && operatingGap <= run.at(-1)![0],
  );
  return longest(around) ?? longest(straight) ?? [];
}

function voltsAt(points: Points, gap: number): number {
  const at = Math.min(
    Math.max(
      1,
      points.findIndex(([one]) => one >= gap),
    ),
    points.length - 1,
  );
  const [[from, first], [to, last]] = [points[at - 1]!, points[at]!];
  return first + ((gap - from) * (last - first)) / (to - from);
}

function gapAt(points: Points, volts: number): number | null {
  const [start, end] = [points[0]!, points.at(-1)!];
  if (volts > start[1] || volts < end[1]) return null;
  return bisected((gap) => voltsAt(points, gap) <= volts, start[0], end[0]);
}

/** Where a condition that holds above some place begins to hold. */
function bisected(holds: (x: number) => boolean, from: number, to: number): number {
  let [low, high] = [from, to];
  for (let step = 0; step < 200; step++) {
    const middle = (low + high) / 2;
    if (holds(middle)) high = middle;
    else low = middle;
  }
  return (low + high) / 2;
}

/** 190 mV/mil, as laid out, in V per µm. */
const configured = 0.19 / 25.4;

/** Real displacement in mil at which a setpoint (mil) acts, or the largest indication; `undefined` where neither can be told. */
export function acts(
  channel: PlannedChannel,
  { record: { points }, operatingGap }: Worked,
  setpoint: number,
): { onCurve: number | null; largest: number | null } | undefined {
  const [from, to] = [points[0]![0], points.at(-1)![0]];
  const wanted = setpoint * 25.4 * configured;
  if (channel.axial) {
    const { sign, zeroConfigured, zeroMeasured } = channel;
    const [rest, acting] = [gapAt(points, zeroMeasured), gapAt(points, zeroConfigured + sign * wanted)];
    if (rest !== null && acting !== null) return { onCurve: (sign * (rest - acting)) / 25.4, largest: null };
    if (rest === null) return { onCurve: null, largest: null };
    const end = sign > 0 ? points[0]! : points.at(-1)!;
    return { onCurve: null, largest: (sign * (end[1] - zeroConfigured)) / configured / 25.4 };
  }
  if (operatingGap === null) return undefined;
  const swing = (half: number): number =>
    voltsAt(points, operatingGap - half) - voltsAt(points, operatingGap + half);
  const most = Math.min(operatingGap - from, to - operatingGap);
  if (swing(most) < wanted) return { onCurve: null, largest: swing(most) / configured / 25.4 };
  return { onCurve: (2 * bisected((half) => swing(half) >= wanted, 0, most)) / 25.4, largest: null };
}

/** Mean of output over displacement, V per µm; JCGM 100:2008 4.2. */
export function dynamicMean({ levels }: PlannedChannel): number | null {
  return levels.length === 0 ? null : mean(levels.map(([level, output]) => output / level));
}
