import { positive } from '../range.ts';
import { lateCounts } from './lateCounts.ts';
import { type LateMember, againstLimit, usable } from './member.ts';

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
export function groupLate(group: LateGroup): LateShare {
  const { m, limit, members } = group;
  const nothing = { late: NaN, inTime: NaN };
  if (!Number.isInteger(m) || m < 1 || m > members.length) return nothing;
  if (!positive(limit) || !members.every(usable)) return nothing;
  const needed = lateNeeded(group);
  if (members.filter(({ threshold }) => threshold === Infinity).length >= needed)
    return { late: 1, inTime: 0 };
  const counts = lateCounts(members.map((member) => againstLimit(member, limit)));
  const sum = (part: readonly number[]) =>
    Math.min(
      1,
      part.reduce((total, one) => total + one, 0),
    );
  return { late: sum(counts.slice(needed)), inTime: sum(counts.slice(0, needed)) };
}
