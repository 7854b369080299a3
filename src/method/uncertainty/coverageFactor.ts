import quantile from '@stdlib/stats-base-dists-t-quantile';
import { bracketedRoot } from '../bracketedRoot.ts';
import { normalCdf } from '../decision/normal.ts';

/** Probability that ±2 standard deviations cover of a normal distribution: the level that k = 2 stands for. */
export const TWO_SIGMA = 0.954_499_736_103_642;

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
