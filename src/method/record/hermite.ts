import { segmentOf } from './curve.ts';
import { monotoneSlopes } from './monotoneSlopes.ts';

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
