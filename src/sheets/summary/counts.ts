import { type ThresholdVerdict, verdicts } from '../../audit/model/threshold.ts';
import type { Summary, VerdictCounts } from '../../audit/model/report.ts';
import { verdictWords } from '../../audit/model/wording.ts';
import { cell } from '../cells.ts';
import { verdictStyle } from '../style/verdictStyles.ts';
import { heading, rest, wide, type Entry } from './layout.ts';

/** Counts of channels and groups, of what needs action and of what was not read. */
export type Counts = VerdictCounts & Pick<Summary, 'notRead' | 'critical' | 'warnings'>;

const meanings: Readonly<Record<ThresholdVerdict, string>> = {
  unreachable:
    'A threshold cannot act: it is set above full scale, lies beyond the linear range or the fault limits, or on the other side of zero.',
  late: 'A threshold really acts at a higher level than it was set for: the unsafe side.',
  undetermined: 'It can’t be shown on which side of the tolerance a threshold acts. Measure more accurately.',
  early: 'A threshold really acts at a lower level than it was set for: expect false alarms and trips.',
  incomplete: 'A value is missing or can’t be used. Do not rely on its protection.',
  within: 'Every threshold acts where it was meant to, within the tolerance.',
};

/** Whether nothing needs action and all was read: only then anything may be called OK as a whole. */
export function isClean({ critical, warnings, notRead }: Counts): boolean {
  return critical + warnings + notRead === 0;
}

/**
 * How things stand, the answer first: counts of channels as they are now, then what else there is. `complete`: whether these
 * are the counts of all that was to be audited.
 */
export function headline(counts: Counts, complete = true): string {
  const { channels, inBypass } = counts;
  if (channels === 0) return ['No channel was audited.', ...beside(counts)].join(' ');
  if (complete && isClean(counts) && counts.within === channels)
    return channels === 1 ? 'The one channel is OK.' : `All ${channels} channels are OK.`;
  const parts = verdicts.flatMap((verdict) =>
    counts[verdict] === 0 ? [] : [`${counts[verdict]} ${verdictWords[verdict]}`],
  );
  const bypassed = inBypass === 0 ? [] : [`${inBypass} in bypass`];
  const ok = counts.within === 0 ? [] : parts.slice(-1);
  const others = counts.within === 0 ? parts : parts.slice(0, -1);
  return [`${number(channels)}: ${[...others, ...bypassed, ...ok].join(', ')}.`, ...beside(counts)].join(' ');
}

function number(channels: number): string {
  return channels === 1 ? '1 channel' : `${channels} channels`;
}

/** What stands beside the counts of channels, a sentence each. */
function beside({ groupsThatCannotTrip: groups, notRead, critical, warnings }: Counts): string[] {
  const actions = critical + warnings;
  return [
    ...(groups > 0 ? [`${groups} voting ${groups === 1 ? 'group' : 'groups'} cannot trip.`] : []),
    ...(notRead > 0 ? [`${notRead} ${notRead === 1 ? 'thing was' : 'things were'} not read.`] : []),
    ...(actions > 0
      ? [`${actions} ${actions === 1 ? 'thing needs' : 'things need'} action, ${critical} critical.`]
      : []),
  ];
}

/** Counts of channels by their worst threshold now, and what each verdict means. */
export function countLines(summary: Summary): readonly (readonly Entry[])[] {
  return [
    heading('How many'),
    [cell('Verdict', 'header'), cell('Channels', 'headerCentred'), wide('Meaning', 'header', rest(2))],
    ...verdicts.map((verdict) =>
      line(verdictWords[verdict], summary[verdict], meanings[verdict], verdictStyle(verdict)),
    ),
    line(
      'in bypass',
      summary.inBypass,
      'Protect nothing until the bypass is taken out. Not counted above.',
      verdictStyle('in bypass'),
    ),
    line('channels in all', summary.channels, 'Each is counted once, by its worst threshold as it is now.'),
    line(
      'cannot trip',
      summary.groupsThatCannotTrip,
      'Voting groups that cannot trip the machine, because too few of their members can act.',
      verdictStyle('unreachable'),
    ),
    line('not read', summary.notRead, 'Parts of the workbook that look like this audit’s and were not read.'),
    ...historyLines(summary),
  ];
}

function historyLines({ asLeft, corrected }: Summary): readonly (readonly Entry[])[] {
  if (asLeft === 0) return [];
  return [
    line('measured again', asLeft, 'Channels measured again after a correction; counted above as left.'),
    line('corrected', corrected, 'Of these, not OK as found and OK as left.'),
  ];
}

function line(name: string, count: number, meaning: string, style = 'strong'): readonly Entry[] {
  return [cell(name, style), cell(count, 'count'), wide(meaning, 'wrapped', rest(2))];
}
