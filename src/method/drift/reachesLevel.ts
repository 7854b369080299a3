import type { StraightLine } from '../record/straightLine.ts';

/**
 * Where a line reaches a level, in the unit of x; `Infinity` for a level line that does not lie on it, `NaN` where an
 * input is none. Worked out about the mean of x. Source: the line itself, solved for x.
 * Example: y = 200 − 0.01·x reaches 190 at x = 1000.
 */
export function reachesLevel(line: StraightLine, level: number): number {
  const off = level - meanY(line);
  if (line.slope === 0 && off !== 0 && Number.isFinite(off)) return Infinity;
  return line.meanX + off / line.slope;
}

/** The line at the mean of x, which is the mean of the readings. */
export function meanY({ intercept, slope, meanX }: StraightLine): number {
  return intercept + slope * meanX;
}
