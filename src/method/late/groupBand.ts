import { bracketedRoot } from '../bracketedRoot.ts';
import { normalCdf } from '../decision/normal.ts';
import { type Band, NO_BAND, positive } from '../range.ts';
import { votedThreshold } from '../voting/voting.ts';
import { type LateGroup, groupLateAt } from './groupLate.ts';
import type { LateMember } from './member.ts';

type Voters = Pick<LateGroup, 'm' | 'members'>;

/**
 * Interval of the threshold of an M-out-of-N group at a coverage factor k (above 0): where it has acted with probability
 * Φ(−k), and with Φ(k); for one member it is `band` of U = k·u. In the unit of the thresholds. Both `NaN` where the group
 * cannot trip, where no upper end exists (uncertainties as great as 1/k) or an input is out of range. Source: quantiles
 * of the order statistic. Example: 2oo3 of 188, 192, 197 for 200 mV/mil, one batch, 5 mil → about 5.03 to 5.40 mil.
 */
export function groupBand(voters: Voters, coverage: number): Band {
  if (!positive(coverage)) return NO_BAND;
  const [only] = voters.members;
  if (only && voters.members.length === 1 && (only.offset ?? 0) === 0)
    return bandOfOne(only, voters.m, coverage);
  const tail = normalCdf(-coverage);
  const at = groupLateAt(voters);
  const low = quantileWhere(voters, (limit) => at(limit).inTime - tail);
  const high = quantileWhere(voters, (limit) => tail - at(limit).late);
  return Number.isNaN(low) || Number.isNaN(high) ? NO_BAND : { low, high };
}

/** The closed form of a single member. */
function bandOfOne({ threshold, shared, own }: LateMember, m: number, coverage: number): Band {
  const part = coverage * Math.hypot(shared, own);
  if (m !== 1 || !positive(threshold) || !(part < 1)) return NO_BAND;
  return { low: threshold / (1 + part), high: threshold / (1 - part) };
}

/**
 * Real displacement by which the group has acted with probability `share`, strictly between 0 and 1. Range, unit and
 * source as `groupBand`. Example: the median of a 2oo3 group of three alike is their threshold.
 */
export function groupQuantile(voters: Voters, share: number): number {
  if (!(share > 0 && share < 1)) return NaN;
  const at = groupLateAt(voters);
  return quantileWhere(voters, (limit) => {
    const { late, inTime } = at(limit);
    return share <= 0.5 ? inTime - share : 1 - share - late;
  });
}

/** Farther than any threshold from the voted one, in ln. */
const FARTHEST = 40;

/** The limit at which `f`, rising with it, is 0; sought in ln, out from where the best values have the group act. */
function quantileWhere({ m, members }: Voters, f: (limit: number) => number): number {
  const best = votedThreshold(
    members.map(({ threshold }) => threshold),
    m,
  );
  if (!positive(best)) return NaN;
  const at = (x: number): number => f(best * Math.exp(x));
  const widest = members.reduce((most, { shared, own }) => Math.max(most, shared, own), 1e-4);
  let [low, high] = [-widest, widest];
  let [atLow, atHigh] = [at(low), at(high)];
  while (atLow > 0 && low > -FARTHEST) atLow = at((low *= 2));
  while (atHigh < 0 && high < FARTHEST) atHigh = at((high *= 2));
  return best * Math.exp(bracketedRoot(at, low, high, atLow, atHigh));
}
