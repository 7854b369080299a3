import type { ThresholdChange, ThresholdVerdict } from './threshold.ts';

const late: ReadonlySet<ThresholdVerdict> = new Set(['unreachable', 'late', 'undetermined']);

/** Whether a verdict leaves it open that the machine is protected as set: late, unreachable or undetermined. */
export function mayBeLate(verdict: ThresholdVerdict): boolean {
  return late.has(verdict);
}

/** What became of a threshold, from its verdicts as found and as left; see `ThresholdChange`. */
export function changeOf(found: ThresholdVerdict, left: ThresholdVerdict): ThresholdChange {
  if (found === 'incomplete' || left === 'incomplete') return 'not judged';
  if (left === 'within') return found === 'within' ? 'unchanged' : 'corrected';
  return found === left ? `still ${left}` : `now ${left}`;
}
