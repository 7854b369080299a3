import type { GroupResult } from '../../../audit/model/report.ts';
import { timesAtStartUp, trips } from '../../../audit/model/threshold.ts';
import { verdictWords } from '../../../audit/model/verdictWords.ts';
import { level } from '../../../audit/model/wording.ts';
import { actsAs } from '../channels/thresholdText.ts';

/** A threshold of a group in numbers: `2oo2, danger: set 5, really trips at 6.25 mil, late`. */
export function groupText(group: GroupResult): string {
  const { voting, threshold, multiplier, intended, effective, canTrip, late, beyondLimit, limit } = group;
  const set = intended === null ? 'setpoint not known' : `set ${levelOf(group, intended)}`;
  const parts = [
    `${voting}, ${threshold}${timesAtStartUp(multiplier)}: ${set}`,
    reallyText(group, canTrip, effective),
    ...between(group),
    ...(late ? [verdictWords.late] : []),
    ...(beyondLimit && limit !== null ? [`beyond its limit of ${levelOf(group, limit)}`] : []),
  ];
  return parts.join(', ');
}

/** Between which levels it acts, as far as its measurements are uncertain. */
function between(group: GroupResult): string[] {
  const { low, high } = group.chance ?? { low: null, high: null };
  if (low === null || high === null) return [];
  const sign = group.threshold.startsWith('counter') ? -1 : 1;
  return [`acts between ${level(sign * low, null)} and ${levelOf(group, sign * high)}`];
}

/** How the group was found, where a member was measured again since. */
export function foundText(group: GroupResult): string | null {
  const { asFound } = group;
  if (!asFound) return null;
  const by = asFound.decidedBy.length > 0 ? `, by ${asFound.decidedBy.join(', ')}` : '';
  return `As found: ${reallyText(group, asFound.canTrip, asFound.effective)}${by}`;
}

function reallyText(group: GroupResult, canTrip: boolean, effective: number | null): string {
  const { threshold, liveVoting, out } = group;
  if (liveVoting === 'tripped') return 'has tripped already: votes of members out count';
  const left = out.length > 0 && canTrip ? ` (${liveVoting} left)` : '';
  if (!canTrip) return trips(threshold) ? 'cannot trip' : 'cannot alarm';
  if (effective === null) return verdictWords.incomplete;
  return `really ${actsAs(threshold)} at ${levelOf(group, effective)}${left}`;
}

function levelOf({ unit }: GroupResult, value: number): string {
  return `${level(value, null)}${unit === null || unit === '' ? '' : ` ${unit}`}`;
}
