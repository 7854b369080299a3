import type { Moment, ReplayedChannel, ReplayedThreshold } from '../model/replay.ts';
import { clockOf, dayOf, duration } from '../model/wording.ts';

/** What a record says of a channel, a sentence a threshold, and what it can't say. */
export function replayedText({ tag, thresholds, shortNotSeen, interval }: ReplayedChannel): string[] {
  const reached = thresholds.filter(({ outcome }) => outcome !== 'not reached');
  const never = thresholds.filter(({ outcome }) => outcome === 'not reached').map(({ name }) => name);
  return [
    ...reached.map((threshold) => `${tag} ${threshold.name}: ${outcomeText(threshold)}.`),
    ...(never.length > 0 ? [`${tag} ${never.join(', ')}: not reached, and should not have been.`] : []),
    ...(shortNotSeen && interval !== null && reached.length > 0
      ? [`${tag}: a reading every ${duration(interval)}; what exceeds for a shorter time is not seen.`]
      : []),
  ];
}

/** What a record says of one threshold. */
export function outcomeText({ outcome, acted, should, late, fromStart }: ReplayedThreshold): string {
  const fine = late !== null && Math.abs(late) < 60;
  const then = spanText(acted.proven, acted.earliest, fine);
  const due = `${spanText(should.proven, should.earliest, fine)}${fromStart ? ', where the record begins, or before' : ''}`;
  switch (outcome) {
    case 'late':
      return `${fromStart ? 'at least ' : ''}${duration(late ?? NaN)} late, acted ${then}, should have ${due}`;
    case 'early':
      return `${duration(late ?? NaN)} early, acted ${then}, should have ${due}`;
    case 'as set':
      return `on time, ${then}`;
    case 'did not act':
      return `did not act, should have ${due}`;
    case 'false':
      return `acted ${then}, and should not have`;
    case 'not known':
      return `not known: acted ${then}, should have ${due}`;
    case 'not reached':
      return 'not reached';
  }
}

/** When it acted as far as is proven; where unknown readings matter, the earliest possible too. */
function spanText(proven: Moment | null, earliest: Moment | null, fine: boolean = false): string {
  const at = (moment: Moment): string => `${dayOf(moment.time)} ${clockOf(moment.time, fine)}`;
  if (!proven) return earliest ? `not proven (possibly from ${at(earliest)})` : 'never in the record';
  const isSure = !earliest || Math.abs(proven.seconds - earliest.seconds) < 5e-4;
  return isSure ? `at ${at(proven)}` : `at ${at(proven)} (possibly from ${clockOf(earliest.time, fine)})`;
}
