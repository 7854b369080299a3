import type { Voting } from './voting.ts';

/** What a monitor does with the vote of a member that is out of service: a setting of the system, never inferred. */
export const outPolicies = ['no-trip', 'trip', 'reduce'] as const;

export type OutPolicy = (typeof outPolicies)[number];

/** The voting that is left to the live members; `tripped` has acted already, `cannot trip` never will. */
export type LiveVote = Voting | 'tripped' | 'cannot trip';

/**
 * M-out-of-N voting while `out` members (a whole number from 0 to N) are in bypass or faulty. `no-trip`: they cast no
 * vote, M out of N − b. `trip`: each casts a vote, M − b out of N − b. `reduce`: the vote is among the live members,
 * min(M, N − b) out of N − b. With no live member nothing can trip, unless the votes cast have tripped it. `undefined`
 * where M, N or `out` is no such number. Source: counting votes; the two outcomes of 2oo3 agree with a textbook on
 * safety system verification (excerpt read). Example: 2oo3, one out, `trip` → 1oo2.
 */
export function liveVote({ m, n }: Voting, out: number, policy: OutPolicy): LiveVote | undefined {
  if (![m, n, out].every(Number.isInteger) || m < 1 || n < m || out < 0 || out > n) return undefined;
  const live = n - out;
  switch (policy) {
    case 'no-trip':
      return m > live ? 'cannot trip' : { m, n: live };
    case 'trip':
      return m <= out ? 'tripped' : { m: m - out, n: live };
    case 'reduce':
      return live === 0 ? 'cannot trip' : { m: Math.min(m, live), n: live };
  }
}

/** A live vote as text: `2oo2`, `tripped`, `cannot trip`. */
export function liveVoteText(vote: LiveVote): string {
  return typeof vote === 'string' ? vote : `${vote.m}oo${vote.n}`;
}
