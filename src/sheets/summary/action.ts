import type { GroupResult } from '../../audit/model/report.ts';
import { tripWord } from '../groups/formulas.ts';
import type { Subject } from './needsAction.ts';
import { groupSentence, thresholdSentence } from './sentence.ts';
import { thresholdName } from '../../audit/model/threshold.ts';

/** What needs action, in words: what it is, where it is set and acts in its own unit, and what happens. */
export interface Action {
  /** Tag or group. */
  readonly name: string;
  readonly machine: string;
  readonly location: string;
  /** Its threshold, with the multiplier where there is one. */
  readonly threshold: string;
  readonly verdict: string;
  readonly set: number | null;
  readonly acts: number | null;
  readonly unit: string | null;
  readonly sentence: string;
}

/** Says of a group or threshold what needs action. */
export function actionOf(subject: Subject): Action {
  if ('group' in subject) {
    const { group } = subject;
    const { name, voting, threshold, canTrip, intended, effective, unit } = group;
    return {
      name,
      machine: `group, ${voting}`,
      location: '',
      threshold,
      verdict: canTrip ? trouble(group) : tripWord(threshold, canTrip),
      set: intended,
      acts: effective,
      unit,
      sentence: groupSentence(group),
    };
  }
  const { channel, threshold } = subject;
  const { verdict, setpoint, multiplier, effective } = threshold;
  return {
    name: channel.tag,
    machine: channel.machine,
    location: channel.location,
    threshold: thresholdName(threshold),
    verdict,
    set: setpoint === null ? null : multiplier * setpoint,
    acts: effective,
    unit: channel.unit,
    sentence: thresholdSentence(channel, threshold),
  };
}

function trouble({ findings }: GroupResult): string {
  return findings.some((finding) => finding.rule === 'group-late') ? 'late' : 'beyond limit';
}
