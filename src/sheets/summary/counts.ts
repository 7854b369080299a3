import { type ThresholdVerdict, verdicts } from '../../audit/model/threshold.ts';
import type { AsLeftCounts, Summary, VerdictCounts } from '../../audit/model/report.ts';
import { cell } from '../cells.ts';
import { heading, wide, type Entry } from './layout.ts';

const meanings: Readonly<Record<ThresholdVerdict, string>> = {
  unreachable:
    'A threshold can’t be relied on to act: above full scale, out of the linear reach, or on the other side of zero.',
  late: 'A threshold acts at a higher real level than it was set for: the unsafe side.',
  undetermined:
    'The uncertainty is too wide to tell on which side of the tolerance a threshold acts. Measure more accurately.',
  early: 'A threshold acts at a lower real level than it was set for: expect spurious alarms and trips.',
  incomplete:
    'Could not be audited: a value is missing or can’t be used. Its protection is not known to be right.',
  within: 'Every threshold acts where it was meant to, within the tolerance.',
};

/** One sentence that says how things stand. */
export function headline(summary: VerdictCounts): string {
  const { channels, groupsThatCannotTrip: groups } = summary;
  const parts = verdicts.flatMap((verdict) =>
    verdict === 'within' || summary[verdict] === 0 ? [] : [phrases[verdict](summary[verdict])],
  );
  const all = `${channels} ${channels === 1 ? 'channel' : 'channels'}`;
  const stand =
    channels === 0
      ? 'No channel was audited.'
      : parts.length === 0
        ? `All thresholds of ${all} act within the tolerance.`
        : `Of ${all}, ${listed(parts)}.`;
  if (groups === 0) return stand;
  return `${stand} ${groups} voting ${groups === 1 ? 'group' : 'groups'} cannot trip.`;
}

const phrases: Readonly<Record<Exclude<ThresholdVerdict, 'within'>, (count: number) => string>> = {
  unreachable: (count) => `${count} can’t be relied on to act`,
  late: (count) => `${count} ${count === 1 ? 'acts' : 'act'} late`,
  undetermined: (count) => `${count} can’t be told`,
  early: (count) => `${count} ${count === 1 ? 'acts' : 'act'} early`,
  incomplete: (count) => `${count} could not be audited`,
};

function listed(parts: readonly string[]): string {
  const last = parts.at(-1) ?? '';
  return parts.length < 2 ? last : `${parts.slice(0, -1).join(', ')} and ${last}`;
}

/** Counts of channels by their worst threshold, and what each verdict means. */
export function countLines(summary: Summary): readonly (readonly Entry[])[] {
  return [
    heading('How many'),
    [cell('Verdict', 'header'), cell('Channels', 'headerCentred'), wide('Meaning', 'header', 7)],
    ...verdicts.map((verdict): readonly Entry[] => [
      cell(verdict, 'strong'),
      cell(summary[verdict], 'count'),
      wide(meanings[verdict], 'wrapped', 7),
    ]),
    [
      cell('channels in all', 'strong'),
      cell(summary.channels, 'count'),
      wide('Each is counted once, by its worst threshold.', 'wrapped', 7),
    ],
    [
      cell('cannot trip', 'strong'),
      cell(summary.groupsThatCannotTrip, 'count'),
      wide(
        'Voting groups that cannot trip the machine, because too few of their members can act.',
        'wrapped',
        7,
      ),
    ],
    ...asLeftLines(summary.asLeft),
  ];
}

function asLeftLines({ judged, cured, stillLate, newlyLate }: AsLeftCounts): readonly (readonly Entry[])[] {
  if (judged === 0) return [];
  const line = (name: string, count: number, meaning: string): readonly Entry[] => [
    cell(name, 'strong'),
    cell(count, 'count'),
    wide(meaning, 'wrapped', 7),
  ];
  return [
    line('judged as left', judged, 'Channels read again after a correction. The counts above are as found.'),
    line('cured', cured, 'Not within as found; as left every threshold acts within the tolerance.'),
    line(
      'still late',
      stillLate,
      'Late, unreachable or undetermined as found, and as left one of these too.',
    ),
    line('newly late', newlyLate, 'Late, unreachable or undetermined as left, and not as found.'),
  ];
}
