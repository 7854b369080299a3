import { type CalibrationRecord, stepNotFalling } from './calibrationRecord.ts';
import { type Curve, type CurveMethod, segmentOf } from './curve.ts';
import { bracketedRoot } from '../bracketedRoot.ts';

/** The curve of a record by the method of that name; `undefined` where the voltage does not fall all the way. */
export function curveOf(record: CalibrationRecord, method: CurveMethod): Curve | undefined {
  return method === 'linear' ? linearCurve(record) : monotoneCurve(record);
}

/**
 * The record joined by straight pieces. The voltage has to fall all the way, `undefined` otherwise; V and the record's
 * gap unit. Source: linear interpolation. Example: −2 V at 10 mil, −4 V at 20 mil → −3 V at 15 mil.
 */
function linearCurve(record: CalibrationRecord): Curve | undefined {
  if (stepNotFalling(record) !== undefined) return undefined;
  const { gaps, volts } = record;
  const rising = volts.map((volt) => -volt);
  return {
    from: gaps[0] ?? NaN,
    to: gaps.at(-1) ?? NaN,
    voltsAt: (gap) => between(gaps, volts, gap),
    gapAt: (volt) => between(rising, gaps, -volt),
  };
}

/** The value at `at` between rising knots. */
function between(knots: readonly number[], values: readonly number[], at: number): number {
  const segment = segmentOf(knots, at);
  if (segment < 0) return NaN;
  const [start, end] = [knots[segment] ?? NaN, knots[segment + 1] ?? NaN];
  const [first, last] = [values[segment] ?? NaN, values[segment + 1] ?? NaN];
  return at === end ? last : first + ((at - start) / (end - start)) * (last - first);
}

/**
 * The record joined by a monotone piecewise cubic (Fritsch–Butland slopes); never outside neighbouring points. The
 * voltage has to fall all the way, `undefined` otherwise; V and the record's gap unit. Source: `monotoneSlopes`.
 * Example: a straight record is reproduced: −2, −4, −6 V at 10, 20, 30 mil → −3 V at 15 mil.
 */
export function monotoneCurve(record: CalibrationRecord): Curve | undefined {
  if (stepNotFalling(record) !== undefined) return undefined;
  const { gaps, volts } = record;
  const voltsAt = cubicThrough(gaps, volts);
  const rising = volts.map((volt) => -volt);
  return {
    from: gaps[0] ?? NaN,
    to: gaps.at(-1) ?? NaN,
    voltsAt,
    gapAt: (volt) => {
      const segment = segmentOf(rising, -volt);
      if (segment < 0) return NaN;
      const [start, end] = [gaps[segment] ?? NaN, gaps[segment + 1] ?? NaN];
      return bracketedRoot((gap) => voltsAt(gap) - volt, start, end);
    },
  };
}

/**
 * The monotone piecewise cubic through points, as a function; `NaN` outside them. `x` strictly rising, two points or
 * more. Between two points it stays between them, to the last digit. Source: cubic Hermite form with the slopes of `monotoneSlopes`. Example: the RPN 14 data at 9.191 → 0.4640.
 */
export function cubicThrough(x: readonly number[], y: readonly number[]): (at: number) => number {
  const slopes = monotoneSlopes(x, y);
  return (at) => {
    const segment = segmentOf(x, at);
    if (segment < 0) return NaN;
    const [start, end] = [x[segment] ?? NaN, x[segment + 1] ?? NaN];
    const [first, last] = [y[segment] ?? NaN, y[segment + 1] ?? NaN];
    if (at === end) return last;
    const step = end - start;
    const along = at - start;
    const slope = (last - first) / step;
    const [atStart, atEnd] = [slopes[segment] ?? NaN, slopes[segment + 1] ?? NaN];
    const second = (3 * slope - 2 * atStart - atEnd) / step;
    const third = (atStart + atEnd - 2 * slope) / (step * step);
    const value = first + along * (atStart + along * (second + along * third));
    return Math.min(Math.max(value, Math.min(first, last)), Math.max(first, last));
  };
}

/**
 * Slopes at the points of a piecewise cubic that is monotone wherever its points are: Fritsch–Butland in the middle (a
 * harmonic mean weighted by the steps, 0 at a turn), three-point slopes kept to the data's direction at the ends. `x`
 * strictly rising, two points or more; slopes in units of y per unit of x. Source: F. N. Fritsch, J. Butland, SIAM J.
 * Sci. Stat. Comput. 5 (1984) 300–304, weights 2h_k + h_(k−1) and h_k + 2h_(k−1); ends as in the published PCHIP.
 */
function monotoneSlopes(x: readonly number[], y: readonly number[]): number[] {
  const steps = x.slice(1).map((value, at) => value - (x[at] ?? NaN));
  const slopes = steps.map((step, at) => ((y[at + 1] ?? NaN) - (y[at] ?? NaN)) / step);
  const step = (at: number): number => steps[at] ?? NaN;
  const slope = (at: number): number => slopes[at] ?? NaN;
  if (steps.length === 1) return [slope(0), slope(0)];
  const end = steps.length - 1;
  return x.map((_, at) => {
    if (at === 0) return endSlope(step(0), step(1), slope(0), slope(1));
    if (at > end) return endSlope(step(end), step(end - 1), slope(end), slope(end - 1));
    const [before, after] = [slope(at - 1), slope(at)];
    if (!(before * after > 0)) return 0;
    const ofBefore = 2 * step(at) + step(at - 1);
    const ofAfter = step(at) + 2 * step(at - 1);
    return (ofBefore + ofAfter) / (ofBefore / before + ofAfter / after);
  });
}

function endSlope(step: number, next: number, slope: number, nextSlope: number): number {
  const three = ((2 * step + next) * slope - step * nextSlope) / (step + next);
  if (Math.sign(three) !== Math.sign(slope)) return 0;
  const turns = Math.sign(slope) !== Math.sign(nextSlope);
  return turns && Math.abs(three) > 3 * Math.abs(slope) ? 3 * slope : three;
}
