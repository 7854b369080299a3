import { type LiveVote, type OutPolicy, liveVote } from './liveVote.ts';
import { votedThreshold } from './voted.ts';

/** The voting that members out of service leave, and where the group then acts. */
export interface LiveThreshold {
  readonly vote: LiveVote;
  /** 0 where the group has tripped already, `Infinity` where it cannot trip. */
  readonly threshold: number;
}

/**
 * Where a group acts with members out of service: the order statistic of its live members that the live vote asks for.
 * `thresholds` are those of all N members, in one unit, `Infinity` for a live member that cannot act; `out` says which
 * are out. `undefined` as `liveVote` says. Source: order statistic of the live members; T(trip) ≤ T(reduce) ≤
 * T(no-trip). Example: 2oo3 of 4, 4.3, 3.7 with the first out → 4.3 no-trip, 3.7 trip, 4.3 reduce.
 */
export function liveThreshold(
  m: number,
  thresholds: readonly number[],
  out: readonly boolean[],
  policy: OutPolicy,
): LiveThreshold | undefined {
  const live = thresholds.filter((_, at) => out[at] !== true);
  const vote = liveVote({ m, n: thresholds.length }, thresholds.length - live.length, policy);
  if (vote === undefined) return undefined;
  if (vote === 'tripped') return { vote, threshold: 0 };
  if (vote === 'cannot trip') return { vote, threshold: Infinity };
  return { vote, threshold: votedThreshold(live, vote.m) };
}
