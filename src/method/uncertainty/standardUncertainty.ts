/** How the values of one part of an uncertainty budget are spread, and what is stated of it. */
export const distributions = ['normal', 'rectangular', 'triangular', 'standard'] as const;
export type Distribution = (typeof distributions)[number];

/** What a stated half-width or expanded uncertainty is divided by. */
const divisors: Readonly<Record<Distribution, number>> = {
  // An expanded uncertainty with coverage factor 2, as certificates state it.
  normal: 2,
  rectangular: Math.sqrt(3),
  triangular: Math.sqrt(6),
  // A standard deviation, of a mean for instance, as it is.
  standard: 1,
};

/**
 * Standard uncertainty of one part of a budget, in the unit of `value`: an expanded uncertainty ÷ 2 (`normal`, k = 2),
 * the half-width of a rectangle ÷ √3 or of a triangle ÷ √6, a standard uncertainty as it is. 0 or above; `NaN`
 * otherwise. Source: JCGM 100:2008 4.3.3, 4.3.7, 4.3.9. Example: ±0.5 % rectangular → 0.289 %.
 */
export function standardUncertainty(value: number, distribution: Distribution): number {
  return value >= 0 && value < Infinity ? value / divisors[distribution] : NaN;
}
