import { parseVoting } from '../../method/voting/voting.ts';
import type { Attention, GroupResult } from '../model/report.ts';
import { trips, type MemberReason } from '../model/threshold.ts';
import { capital, level, listed } from '../model/wording.ts';

/** What is said of a voting group that is late, acts beyond its limit, has tripped or cannot act. */
export function groupSentences(
  group: GroupResult,
  entry: Pick<Attention, 'code' | 'set' | 'real'>,
): Pick<Attention, 'headline' | 'doNext'> {
  const { name, voting, threshold, multiplier, unit, members, decidedBy, limit } = group;
  const say = (value: number | null): string => `${level(value ?? NaN, null)}${unit ? ` ${unit}` : ''}`;
  const way = threshold.startsWith('counter') ? ' in the counter direction' : '';
  const whom = `${capital(name)} (${voting})${way}${multiplier === 1 ? '' : ' at start-up'}`;
  const acts = trips(threshold) ? 'trips' : 'alarms';
  if (entry.code === 'group-late')
    return {
      headline: `${whom} is late: meant ${say(entry.set)}, really ${acts} at ${say(entry.real)} by ${listed(decidedBy)}.`,
      doNext: correctFirst(group),
    };
  if (entry.code === 'group-beyond-limit')
    return {
      headline: `${whom} ${acts} at ${say(entry.real)}, beyond its limit of ${say(limit)}.`,
      doNext: 'Before start-up: the machinery engineer responsible must decide.',
    };
  if (entry.code === 'group-tripped')
    return {
      headline: `${whom} has tripped already, or would at once: the votes of ${listed(decidedBy)} count though they are out.`,
      doNext: 'Check what the system does with members out of service, and restore them before start-up.',
    };
  const idle = members.flatMap(({ tag, why: reason }) =>
    reason === null ? [] : [`${tag} (${memberReasonText(reason)})`],
  );
  const cannot = trips(threshold) ? 'cannot trip' : 'cannot alarm';
  return {
    headline: `${whom} ${cannot}${idle.length > 0 ? `: ${listed(idle)}` : ''}.`,
    doNext: `Before start-up: get this group able to ${trips(threshold) ? 'trip' : 'alarm'} again.`,
  };
}

/** Why a member can't be counted on, for people. */
export function memberReasonText(reason: MemberReason): string {
  return ofSetting[reason] ?? reason;
}

/** Reasons that could be taken for the vibration's, not the setting's. */
const ofSetting: Readonly<Partial<Record<MemberReason, string>>> = {
  'above full scale': 'set above full scale',
  'outside the fault limits': 'would be marked faulty first',
  'out of the linear reach': 'set beyond the linear range',
};

/** What brings a late group back in time: where one vote is enough, any one of its channels. */
function correctFirst({ liveVoting, members, decidedBy }: GroupResult): string {
  const able = members.flatMap(({ tag, effective }) => (effective === null ? [] : [tag]));
  return parseVoting(liveVoting)?.m === 1 && able.length > 1
    ? `Correct one of ${listed(able)}: one is enough.`
    : `Correct ${listed(decidedBy)} first.`;
}
