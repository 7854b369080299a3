import type { ThresholdVerdict } from './threshold.ts';
import type { AsLeftChange, AsLeftCounts, ChannelResult } from './report.ts';

const late: ReadonlySet<ThresholdVerdict> = new Set(['unreachable', 'late', 'undetermined']);

/** Whether a verdict leaves it open that the machine is protected as set: late, unreachable or undetermined. */
export function mayBeLate(verdict: ThresholdVerdict): boolean {
  return late.has(verdict);
}

/** What became of a threshold, from its verdicts as found and as left; see `AsLeftChange`. */
export function changeOf(found: ThresholdVerdict, left: ThresholdVerdict): AsLeftChange {
  if (found === 'incomplete' || left === 'incomplete') return 'not judged';
  if (left === 'within') return found === 'within' ? 'unchanged' : 'cured';
  return found === left ? `still ${left}` : `now ${left}`;
}

/** Channels that are late, unreachable or undetermined as left. */
export function lateAsLeft({ stillLate, newlyLate }: AsLeftCounts): number {
  return stillLate + newlyLate;
}

/** Counts channels by what became of them. */
export function countAsLeft(channels: readonly ChannelResult[]): AsLeftCounts {
  const counts = { judged: 0, cured: 0, stillLate: 0, newlyLate: 0 };
  for (const { verdict, asLeft } of channels) {
    if (!asLeft) continue;
    counts.judged++;
    if (changeOf(verdict, asLeft.verdict) === 'cured') counts.cured++;
    if (mayBeLate(asLeft.verdict)) counts[mayBeLate(verdict) ? 'stillLate' : 'newlyLate']++;
  }
  return counts;
}
