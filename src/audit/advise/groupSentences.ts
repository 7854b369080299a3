import type { Attention, GroupResult } from '../model/report.ts';
import { trips } from '../model/threshold.ts';
import { capital, level, listed } from '../model/wording.ts';

/** What is wrong with a voting group, and what to do. */
export function groupSentences(
  { name, voting, threshold, multiplier, unit, members, decidedBy, limit }: GroupResult,
  entry: Pick<Attention, 'code' | 'set' | 'real'>,
): Pick<Attention, 'headline' | 'doNext'> {
  const say = (value: number | null): string => `${level(value ?? NaN, null)}${unit ? ` ${unit}` : ''}`;
  const way = threshold.startsWith('counter') ? ' in the counter direction' : '';
  const whom = `${capital(name)} (${voting})${way}${multiplier === 1 ? '' : ' at start-up'}`;
  const acts = trips(threshold) ? 'trips' : 'alarms';
  if (entry.code === 'group-late')
    return {
      headline: `${whom} is late: meant ${say(entry.set)}, really ${acts} at ${say(entry.real)} by ${listed(decidedBy)}.`,
      doNext: `Correct ${listed(decidedBy)} first.`,
    };
  if (entry.code === 'group-beyond-limit')
    return {
      headline: `${whom} ${acts} at ${say(entry.real)}, beyond its limit of ${say(limit)}.`,
      doNext: 'Have those responsible for the machine look at it before start-up.',
    };
  if (entry.code === 'group-tripped')
    return {
      headline: `${whom} has tripped already, or would at once: the votes of ${listed(decidedBy)} count though they are out.`,
      doNext: 'Check what the system does with members out of service, and restore them before start-up.',
    };
  const idle = members.flatMap(({ tag, why: reason }) => (reason === null ? [] : [`${tag} (${reason})`]));
  const cannot = trips(threshold) ? 'cannot trip' : 'cannot alarm';
  return {
    headline: `${whom} ${cannot}${idle.length > 0 ? `: ${listed(idle)}` : ''}.`,
    doNext: 'Restore the group before start-up.',
  };
}
