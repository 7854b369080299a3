import type { StraightLine } from './record/straightLine.ts';

/** Days of a Julian year. Source: IAU Style Manual 1989, 5.15 (exact by definition; from memory). */
export const DAYS_PER_YEAR = 365.25;

/** From where a line may have reached a level, and by where it has, at a level of confidence, in the unit of x. */
export interface LevelSpan {
  /** `-Infinity`: the line may lie beyond the level wherever one looks. */
  readonly from: number;
  /** `Infinity`: the line may never reach the level. */
  readonly to: number;
}

/**
 * Where the confidence band of a line, line ± `factor` · its standard uncertainty, meets a level on the side towards
 * which the line runs: `from` where the edge of the band that leads meets it, `to` where the other edge does. With the
 * scatter 0 both are where the line itself does. `factor` (Student's t with count − 2 degrees of freedom) 0 or above;
 * at least three points, and a line that is not level; `NaN` otherwise.
 * Source: the interval by inversion for a mean response, B. M. Greenwell and C. M. Schubert Kabban, The R Journal 6/1
 * (2014) 90–100 (read), after E. C. Fieller, J. R. Stat. Soc. B 16 (1954) 175–185 (from memory). The uncertainty of the
 * line is that of JCGM 100:2008 H.3, eq. (H.15) about the mean. Where a slope can't be told from 0 the interval is open.
 * Example: F. A. Graybill and H. K. Iyer, Regression Analysis, Duxbury 1994, reaction chamber: 400 °F at 99 % → 65.07 to
 * 68.03 on the dial.
 */
export function reachesLevelSpan(line: StraightLine, level: number, factor: number): LevelSpan {
  const { slope, spreadX, residualDeviation, count, meanX } = line;
  const side = Math.sign(slope);
  const scatter = factor * residualDeviation;
  if (side === 0 || !(scatter >= 0)) return { from: NaN, to: NaN };
  // With d = x − mean: (rise·d − gap)² = scatter²·(1/n + d²/spread), the two edges of the band together.
  const rise = Math.abs(slope);
  const gap = side * (level - meanY(line));
  const atMean = (scatter * scatter) / count;
  const bend = (scatter * scatter) / spreadX;
  const square = (rise - Math.sqrt(bend)) * (rise + Math.sqrt(bend));
  const inside = bend * gap * gap + atMean * square;
  const roots = rootsOf(square, rise * gap, gap * gap - atMean, inside);
  if (square > 0) return { from: meanX + (roots?.low ?? NaN), to: meanX + (roots?.high ?? NaN) };
  // The slope can't be told from 0: at most one edge meets the level, and it is the leading one if it lies short of it
  // at the mean, the other if all of the band lies beyond there.
  const leading = Math.sqrt(atMean) - gap;
  const trailing = -Math.sqrt(atMean) - gap;
  return {
    from: leading < 0 && roots ? meanX + roots.high : -Infinity,
    to: trailing > 0 && roots ? meanX + roots.low : Infinity,
  };
}

/**
 * The solutions of a·d² − 2·b·d + c = 0, the lower first; `undefined` where there are none. `inside` is b² − a·c, given
 * because here it can be had without a difference of two large numbers.
 */
function rootsOf(
  a: number,
  b: number,
  c: number,
  inside: number,
): { readonly low: number; readonly high: number } | undefined {
  if (a === 0) {
    const only = c / (2 * b);
    return Number.isFinite(only) ? { low: only, high: only } : undefined;
  }
  if (!(inside >= 0)) return undefined;
  const larger = b + (b < 0 ? -1 : 1) * Math.sqrt(inside);
  const [one, other] = [larger / a, larger === 0 ? 0 : c / larger];
  return { low: Math.min(one, other), high: Math.max(one, other) };
}

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
function meanY({ intercept, slope, meanX }: StraightLine): number {
  return intercept + slope * meanX;
}

/** A drift per day as one per Julian year of 365.25 days; any unit. Example: 0.01 mV/mil a day → 3.6525 mV/mil a year. */
export function driftPerYear(perDay: number): number {
  return perDay * DAYS_PER_YEAR;
}

/**
 * Correlation of the readings with the time at which they were taken, from the line through them: in [−1, 1], with the
 * sign of the slope; `NaN` where all readings are the same, or there are fewer than three. Source: the product-moment
 * coefficient by sums of squares (common practice, no source); the share of the scatter that the line explains.
 */
export function driftCorrelation({ slope, spreadX, residualDeviation, count }: StraightLine): number {
  const explained = slope * slope * spreadX;
  const left = (count - 2) * residualDeviation * residualDeviation;
  return (Math.sign(slope) * Math.sqrt(explained)) / Math.sqrt(explained + left);
}
