import { normalCdf } from '../decision/normal.ts';
import type { AgainstLimit } from './member.ts';
import { sharedNormal } from './sharedNormal.ts';

/**
 * Probability that a member is late where the normal that it shares is `z`, and that it is in time; each keeps its digits
 * in its own tail. A member without any spread of its own is a step, in time where it acts exactly at the limit.
 */
export function lateGiven(
  { reach, shared, spread }: AgainstLimit,
  z: number,
): [late: number, inTime: number] {
  if (reach === Infinity) return [1, 0];
  const margin = reach - 1 - shared * z;
  if (spread === 0) return margin > 0 ? [1, 0] : [0, 1];
  const size = margin / spread;
  const less = normalCdf(-Math.abs(size));
  return size > 0 ? [1 - less, less] : [less, 1 - less];
}

/** The same for a member whose shared part is shared with nobody: one normal of both parts together. */
export function lateAlone(member: AgainstLimit): [late: number, inTime: number] {
  return lateGiven({ ...member, shared: 0, spread: Math.hypot(member.shared, member.spread) }, 0);
}

/** One more member: `counts[j]` becomes the probability of j late ones, by the Poisson-binomial recursion. */
export function withMember(counts: readonly number[], [late, inTime]: readonly [number, number]): number[] {
  const next: number[] = [];
  for (let j = 0; j <= counts.length; j++)
    next.push((counts[j] ?? 0) * inTime + (j > 0 ? (counts[j - 1] ?? 0) * late : 0));
  return next;
}

/** Late counts of two lots of members that share nothing. */
export function convolved(one: readonly number[], other: readonly number[]): number[] {
  const sums = new Array<number>(one.length + other.length - 1).fill(0);
  for (const [i, a] of one.entries())
    for (const [j, b] of other.entries()) sums[i + j] = (sums[i + j] ?? 0) + a * b;
  return sums;
}

/** Members by what they share; those without a batch, and those alone in one, stand alone. */
export function batchesOf<T extends { readonly batch: string | null }>(members: readonly T[]): T[][] {
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

function countsOfBatch(batch: readonly AgainstLimit[]): number[] {
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
  let most = so.length;
  for (const member of members) {
    const [late, inTime] = lateGiven(member, z);
    for (let j = most; j > 0; j--) counts[j] = (counts[j] ?? 0) * inTime + (counts[j - 1] ?? 0) * late;
    counts[0] = (counts[0] ?? 0) * inTime;
    most++;
  }
}
