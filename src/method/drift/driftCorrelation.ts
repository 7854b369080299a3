import type { StraightLine } from '../record/straightLine.ts';

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
