import type { GroupResult } from '../../audit/model/report.ts';
import { verdictWords } from '../../audit/model/wording.ts';
import { trips, type ThresholdName, type ThresholdVerdict } from '../../audit/model/threshold.ts';

/** What column "Can it trip?" says of a group. */
export function tripWord(threshold: ThresholdName, canTrip: boolean): string {
  if (canTrip) return 'yes';
  return trips(threshold) ? 'cannot trip' : 'cannot act';
}

/**
 * What the group does as audited, shaded as the verdict of a threshold that does the same; `early`: a member that decides is
 * early, and so the group is.
 */
export function groupAction(
  group: GroupResult,
  early: boolean,
): readonly [words: string, verdict: ThresholdVerdict] {
  const { threshold, canTrip, liveVoting, late, beyondLimit } = group;
  if (!canTrip) return [tripWord(threshold, false), 'unreachable'];
  if (liveVoting === 'tripped') return ['has tripped', 'early'];
  if (beyondLimit) return ['beyond limit', 'late'];
  const verdict = late ? 'late' : early ? 'early' : 'within';
  return [verdictWords[verdict], verdict];
}

/** A level away from zero with the sign of the threshold. */
export function signed({ threshold }: GroupResult, size: number | null | undefined): number | null {
  if (size === null || size === undefined) return null;
  return threshold.startsWith('counter') ? -size : size;
}

/** Of the live members; those that were needed where no vote is left. */
export function liveVotes({ voting, liveVoting }: GroupResult): number {
  const left = Number.parseInt(liveVoting, 10);
  if (!Number.isNaN(left)) return left;
  return liveVoting === 'tripped' ? 0 : Number.parseInt(voting, 10);
}

/** `B in bypass: no vote (not said; ask)`, and the vote that is left. */
export function outText({ out, liveVoting }: GroupResult): string | null {
  if (out.length === 0) return null;
  const each = out.map(({ tag, because, policy, saidBy }) => {
    const state = because === 'bypassed' ? 'in bypass' : 'marked faulty';
    const vote = { 'no-trip': 'no vote', trip: 'its vote counts', reduce: 'the others vote' }[policy];
    return `${tag} ${state}: ${vote}${saidBy === null ? ' (not said; ask)' : ''}`;
  });
  return `${each.join('; ')}. Left: ${liveVoting}.`;
}
