import { normalCdf } from '../decision/normal.ts';
import { type AgainstLimit, type LateMember, againstLimit } from './member.ts';
import { sharedNormal } from './sharedNormal.ts';

/**
 * Probability that a member is late where the normal that it shares is `z`, and that it is in time; each keeps its digits
 * in its own tail. A member without any spread of its own is a step, in time where it acts exactly at the limit.
 */
export function lateGiven(
  { reach, shared, spread }: AgainstLimit,
  z: number,
): [late: number, inTime: number] {
  const margin = reach - 1 - shared * z;
  const lesser = lesserShare(margin, spread);
  return margin > 0 ? [1 - lesser, lesser] : [lesser, 1 - lesser];
}

/** The lesser of both, by the margin by which it is late at its best value (above 0: late is the greater) and its spread. */
function lesserShare(margin: number, spread: number): number {
  return spread === 0 ? 0 : normalCdf(-Math.abs(margin / spread));
}

/** The same for a member whose shared part is shared with nobody: one normal of both parts together. */
function lateAlone(member: AgainstLimit): [late: number, inTime: number] {
  return lateGiven({ ...member, shared: 0, spread: Math.hypot(member.shared, member.spread) }, 0);
}

/** One more member: `counts[j]` becomes the probability of j late ones, by the Poisson-binomial recursion. */
export function withMember(counts: readonly number[], [late, inTime]: readonly [number, number]): number[] {
  const next: number[] = [];
  for (let j = 0; j <= counts.length; j++)
    next.push((counts[j] ?? 0) * inTime + (j > 0 ? (counts[j - 1] ?? 0) * late : 0));
  return next;
}

/** Late counts of two sets of members that share nothing. */
function convolved(one: readonly number[], other: readonly number[]): number[] {
  const sums = new Array<number>(one.length + other.length - 1).fill(0);
  for (const [i, a] of one.entries())
    for (const [j, b] of other.entries()) sums[i + j] = (sums[i + j] ?? 0) + a * b;
  return sums;
}

/** Members by what they share; those without a batch, and those alone in one, stand alone. */
function batchesOf<T extends { readonly batch: string | null }>(members: readonly T[]): T[][] {
  const named = new Map<string, T[]>();
  const alone: T[][] = [];
  for (const member of members) {
    if (member.batch === null) alone.push([member]);
    else named.set(member.batch, [...(named.get(member.batch) ?? []), member]);
  }
  return [...alone, ...named.values()];
}

/**
 * Probabilities of 0, 1, … N late members, the errors of a batch shared and batches independent: within a batch the
 * Poisson-binomial recursion for each value of the shared normal, integrated over it; the batches convolved. Source:
 * Tong 1990 ch. 6 (second-hand) for the conditioning. Example: three alike at the limit, nothing shared → ⅛, ⅜, ⅜, ⅛.
 */
export function lateCounts(members: readonly AgainstLimit[]): number[] {
  let counts = [1];
  for (const batch of batchesOf(members)) {
    const [only] = batch;
    if (only && batch.length === 1) counts = withMember(counts, lateAlone(only));
    else counts = convolved(counts, countsOfBatch(batch));
  }
  return counts;
}

/**
 * The same for members held against one limit after another. Where nothing is shared, as in most groups, each limit takes
 * one normal distribution a member and nothing else. Counts hold until the next limit is asked for.
 */
export function lateCountsOf(members: readonly LateMember[]): (limit: number) => ArrayLike<number> {
  if (batchesOf(members).length < members.length)
    return (limit) => lateCounts(members.map((member) => againstLimit(member, limit)));
  // With a zero or the ends of a loop uncertain the spread hangs on the limit.
  const fixed = members.map(({ shared, own, offset = 0, both = 0 }) =>
    offset === 0 && both === 0 ? Math.hypot(shared, own) : undefined,
  );
  const counts = new Float64Array(members.length + 1);
  return (limit) => {
    counts.fill(0);
    counts[0] = 1;
    for (let at = 0; at < members.length; at++) {
      const member = members[at];
      if (!member) continue;
      const { threshold, shared } = member;
      const spread = fixed[at] ?? Math.hypot(shared, againstLimit(member, limit).spread);
      addMember(counts, at, threshold / limit - 1, spread);
    }
    return counts;
  };
}

function countsOfBatch(batch: readonly AgainstLimit[]): number[] {
  if (batch.every(({ spread }) => spread === 0)) return countsOfSteps(batch);
  const { nodes, weights } = sharedNormal(batch);
  const sums = new Array<number>(batch.length + 1).fill(0);
  const counts = new Float64Array(batch.length + 1);
  for (let at = 0; at < nodes.length; at++) {
    countsGiven([1], batch, nodes[at] ?? 0, counts);
    const weight = weights[at] ?? 0;
    for (let j = 0; j <= batch.length; j++) sums[j] = (sums[j] ?? 0) + weight * (counts[j] ?? 0);
  }
  return sums;
}

/**
 * Late counts of members that share one normal and have nothing of their own: each turns in time at one place of it, so
 * that the normal distribution at these places is all it takes. Each count is the difference of two tails of the nearer
 * side, where small ones keep their digits.
 */
function countsOfSteps(batch: readonly AgainstLimit[]): number[] {
  const turns = batch.map(({ reach, shared }) => {
    const margin = reach - 1;
    return shared > 0 ? margin / shared : margin > 0 ? Infinity : -Infinity;
  });
  const places = [Infinity, ...turns.toSorted((one, other) => other - one), -Infinity];
  return places.slice(1).map((from, count) => {
    const to = places[count] ?? Infinity;
    const between = from > 0 ? normalCdf(-from) - normalCdf(-to) : normalCdf(to) - normalCdf(from);
    return Math.max(0, between);
  });
}

/**
 * Late counts of members that share one normal, its value being `z`, added to counts so far; written into `counts`, which
 * has room for all of them, so that an integral makes no new lists.
 */
export function countsGiven(
  so: readonly number[],
  members: readonly AgainstLimit[],
  z: number,
  counts: Float64Array,
): void {
  counts.fill(0);
  for (let j = 0; j < so.length; j++) counts[j] = so[j] ?? 0;
  let before = so.length - 1;
  for (const { reach, shared, spread } of members)
    addMember(counts, before++, reach - 1 - shared * z, spread);
}

/** One more member beside so many, in place, by its margin and spread. */
function addMember(counts: Float64Array, before: number, margin: number, spread: number): void {
  const lesser = lesserShare(margin, spread);
  const late = margin > 0 ? 1 - lesser : lesser;
  const inTime = margin > 0 ? lesser : 1 - lesser;
  for (let j = before + 1; j > 0; j--) counts[j] = (counts[j] ?? 0) * inTime + (counts[j - 1] ?? 0) * late;
  counts[0] = (counts[0] ?? 0) * inTime;
}
