import { positive } from '../range.ts';
import { lateCountsOf } from './lateCounts.ts';
import { type LateMember, usable } from './member.ts';

/** A group: its vote, its members, and the greatest real displacement at which it may act. */
export interface LateGroup {
  /** How many members must act. */
  readonly m: number;
  readonly limit: number;
  readonly members: readonly LateMember[];
}

/** Probability that something is late, and that it is in time; each keeps its digits where it is small. */
export interface LateShare {
  readonly late: number;
  readonly inTime: number;
}

/** How many late members make the group late: N − M + 1, as M of them then cannot act by the limit. */
export function lateNeeded({ m, members }: Pick<LateGroup, 'm' | 'members'>): number {
  return members.length - m + 1;
}

/**
 * Probability, 0 to 1, that an M-out-of-N group acts later than its limit L, with errors shared within batches: at least
 * N − M + 1 of its members late. Limit above 0, in the unit of the thresholds; m a whole number from 1 to N; `NaN`
 * otherwise, and where a member cannot be used. With one member it is `probabilityLater`. Source: derivation; order
 * statistics given the shared normal after Tong 1990 ch. 6 (second-hand).
 * Example: 2oo3, three alike acting at the limit, nothing shared → ½.
 */
export function groupLate({ m, limit, members }: LateGroup): LateShare {
  return groupLateAt({ m, members })(limit);
}

const nothing: LateShare = { late: NaN, inTime: NaN };

/** As `groupLate`, for one limit after another: what does not depend on the limit is worked out once. */
export function groupLateAt({ m, members }: Pick<LateGroup, 'm' | 'members'>): (limit: number) => LateShare {
  if (!Number.isInteger(m) || m < 1 || m > members.length || !members.every(usable)) return () => nothing;
  const needed = lateNeeded({ m, members });
  const idle = members.filter(({ threshold }) => threshold === Infinity).length;
  if (idle >= needed) return (limit) => (positive(limit) ? { late: 1, inTime: 0 } : nothing);
  const countsAt = lateCountsOf(members);
  return (limit) => {
    if (!positive(limit)) return nothing;
    const counts = countsAt(limit);
    return { late: sum(counts, needed, counts.length), inTime: sum(counts, 0, needed) };
  };
}

function sum(counts: ArrayLike<number>, from: number, to: number): number {
  let total = 0;
  for (let count = from; count < to; count++) total += counts[count] ?? 0;
  return Math.min(1, total);
}
