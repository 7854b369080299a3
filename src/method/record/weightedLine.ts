/** A straight line fitted to points of known uncertainty. */
export interface WeightedLine {
  readonly slope: number;
  readonly slopeUncertainty: number;
  readonly intercept: number;
  readonly interceptUncertainty: number;
  readonly covariance: number;
  /** Sum of the squared weighted residuals; compared with n − 2 it tells whether the uncertainties fit the points. */
  readonly chiSquared: number;
  readonly count: number;
}

/**
 * Weighted least-squares line through points (x, y) whose y have the standard uncertainties `u`, all above 0, in the
 * unit of y; x is taken as exact. At least two different x; `undefined` otherwise.
 * Source: ISO/TS 28037:2010, 6.3. Example: x 1 to 6, y 3.3, 5.6, 7.1, 9.3, 10.7, 12.1, u 0.5 → 1.867 (0.465) and
 * 1.757 (0.120), covariance −0.050, χ² 1.665.
 */
export function weightedLine(
  x: readonly number[],
  y: readonly number[],
  u: readonly number[],
): WeightedLine | undefined {
  const count = x.length;
  if (count < 2 || y.length !== count || u.length !== count) return undefined;
  if (!u.every((value) => value > 0 && value < Infinity)) return undefined;
  const weights = u.map((value) => 1 / (value * value));
  const total = sum(weights, () => 1);
  const centreX = sum(weights, (at) => x[at] ?? NaN) / total;
  const centreY = sum(weights, (at) => y[at] ?? NaN) / total;
  const offX = (at: number): number => (x[at] ?? NaN) - centreX;
  const offY = (at: number): number => (y[at] ?? NaN) - centreY;
  const spread = sum(weights, (at) => offX(at) ** 2);
  const slope = sum(weights, (at) => offX(at) * offY(at)) / spread;
  if (!(spread > 0) || !Number.isFinite(slope)) return undefined;
  return {
    slope,
    slopeUncertainty: Math.sqrt(1 / spread),
    intercept: centreY - slope * centreX,
    interceptUncertainty: Math.sqrt(1 / total + (centreX * centreX) / spread),
    covariance: -centreX / spread,
    chiSquared: sum(weights, (at) => (offY(at) - slope * offX(at)) ** 2),
    count,
  };
}

function sum(weights: readonly number[], of: (at: number) => number): number {
  return weights.reduce((total, weight, at) => total + weight * of(at), 0);
}
