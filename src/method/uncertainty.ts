import { positive } from './range.ts';
import quantile from '@stdlib/stats-base-dists-t-quantile';
import { bracketedRoot } from './bracketedRoot.ts';
import { normalCdf } from './decision/normal.ts';

/** Probability that ±2 standard deviations cover of a normal distribution: the level that k = 2 stands for. */
export const TWO_SIGMA = 0.954_499_736_103_642;

/** One part of a budget of independent parts. */
export interface BudgetPart {
  /** Standard uncertainty, 0 or above, in the unit of the result. */
  readonly standard: number;
  /** Degrees of freedom, above 0; infinite where the spread is known. */
  readonly freedom: number;
}

interface Combined {
  readonly standard: number;
  /** Effective degrees of freedom; infinite where no part limits them. */
  readonly freedom: number;
}

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

/**
 * An expanded uncertainty brought from the coverage factor at which it was given to another, U·k/k_given, in its own
 * unit. Uncertainty 0 or above, both factors above 0; `NaN` otherwise. Source: U = k·u, JCGM 100:2008 6.2.1.
 * Example: 4.5 % at k = 3 is 3 % at k = 2.
 */
export function atCoverage(uncertainty: number, given: number, wanted: number): number {
  if (!(uncertainty >= 0) || !positive(given) || !positive(wanted)) return NaN;
  return given === wanted ? uncertainty : (uncertainty * wanted) / given;
}

/**
 * Combined standard uncertainty of independent parts, the root of the sum of squares, and its effective degrees of
 * freedom by Welch–Satterthwaite, u⁴/Σ(u_i⁴/ν_i). At least one part above 0; `undefined` otherwise.
 * Source: JCGM 100:2008 5.1.2 and G.4.1, eq. (G.2b). Example: 0.25, 0.57, 0.82 % with 9, 4, 14 → 1.03 %, 19.0.
 */
export function combineUncertainties(parts: readonly BudgetPart[]): Combined | undefined {
  if (!parts.every(({ standard, freedom }) => standard >= 0 && standard < Infinity && freedom > 0)) {
    return undefined;
  }
  const standard = Math.hypot(...parts.map((part) => part.standard));
  if (!(standard > 0)) return undefined;
  const share = parts.reduce((sum, part) => sum + (part.standard / standard) ** 4 / part.freedom, 0);
  return { standard, freedom: share > 0 ? 1 / share : Infinity };
}

/**
 * Coverage factor k for a two-sided level of confidence: from the t distribution, or from the normal one where the
 * degrees of freedom are infinite. Level in (0, 1); degrees of freedom above 0, not necessarily whole; `NaN` otherwise.
 * Source: JCGM 100:2008 G.3 and table G.2. Example: 95 % with 19 degrees of freedom → 2.09.
 */
export function coverageFactor(level: number, freedom: number): number {
  if (!(level > 0 && level < 1) || !(freedom > 0)) return NaN;
  if (freedom < Infinity) return quantile((1 + level) / 2, freedom);
  const tail = (1 - level) / 2;
  return bracketedRoot((z) => normalCdf(-z) - tail, 0, 38);
}
