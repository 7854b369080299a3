import { type Voting, votedThreshold } from './voting.ts';

/** What a monitor does with the vote of a member that is out of service: a setting of the system, never inferred. */
export const memberOutPolicies = ['no-trip', 'trip', 'reduce'] as const;

export type MemberOutPolicy = (typeof memberOutPolicies)[number];

/** The voting that is left to the live members; `tripped` has acted already, `cannot trip` never will. */
export type LiveVote = Voting | 'tripped' | 'cannot trip';

/**
 * M-out-of-N voting while `out` members (a whole number from 0 to N) are in bypass or faulty. `no-trip`: they cast no
 * vote, M out of N − b. `trip`: each casts a vote, M − b out of N − b. `reduce`: the vote is among the live members,
 * min(M, N − b) out of N − b. With no live member nothing can trip, unless the votes cast have tripped it. `undefined`
 * where M, N or `out` is no such number. Source: counting votes; the two outcomes of 2oo3 agree with a textbook on
 * safety system verification (excerpt read). Example: 2oo3, one out, `trip` → 1oo2.
 */
export function liveVote(voting: Voting, out: number, policy: MemberOutPolicy): LiveVote | undefined {
  return mixedVote(voting, { 'no-trip': 0, trip: 0, reduce: 0, [policy]: out });
}

/**
 * The same where members are out for different reasons, each reason with its own policy: those that reduce the vote leave
 * it first, the others cast theirs or none. Whole numbers that are N at most together; `undefined` otherwise. Source: as
 * `liveVote`. Example: 2oo3 with one out by `trip` and one by `no-trip` → 1oo1.
 */
export function mixedVote(
  { m, n }: Voting,
  out: Readonly<Record<MemberOutPolicy, number>>,
): LiveVote | undefined {
  const { 'no-trip': silent, trip: cast, reduce: reduced } = out;
  const live = n - silent - cast - reduced;
  const counts = [silent, cast, reduced];
  if (![m, n, ...counts].every(Number.isInteger) || m < 1 || n < m) return undefined;
  if (live < 0 || counts.some((count) => count < 0)) return undefined;
  const needed = Math.min(m, n - reduced) - cast;
  if (cast > 0 && needed <= 0) return 'tripped';
  return live === 0 || needed > live ? 'cannot trip' : { m: needed, n: live };
}

/** A live vote as text: `2oo2`, `tripped`, `cannot trip`. */
export function liveVoteText(vote: LiveVote): string {
  return typeof vote === 'string' ? vote : `${vote.m}oo${vote.n}`;
}

/** The voting that members out of service leave, and where the group then acts. */
interface LiveThreshold {
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
  policy: MemberOutPolicy,
): LiveThreshold | undefined {
  const live = thresholds.filter((_, at) => out[at] !== true);
  const vote = liveVote({ m, n: thresholds.length }, thresholds.length - live.length, policy);
  if (vote === undefined) return undefined;
  if (vote === 'tripped') return { vote, threshold: 0 };
  if (vote === 'cannot trip') return { vote, threshold: Infinity };
  return { vote, threshold: votedThreshold(live, vote.m) };
}
