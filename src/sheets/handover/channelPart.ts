import type { Machine } from '../machines.ts';
import { entriesOf, unlistedIn, type ChannelRow } from './channelRows.ts';
import { faultHeaders, faultLine, unlistedLine, type TableTools } from './faultTable.ts';
import type { MachineSheetNames } from './names.ts';
import { full, section } from './pageFrame.ts';
import { listed, type PageLine } from './paper.ts';
import { verdictSigns } from './signs.ts';

/** Lines for settings whose channel is not listed. */
const mostUnlisted = 3;

/** The channels that are not OK, those that are in a line; or, where all are, a line for each. */
export function channelPart(
  machine: Machine,
  faults: readonly ChannelRow[],
  rows: readonly ChannelRow[],
  shown: readonly ChannelRow[],
  names: MachineSheetNames,
  tools: TableTools,
): PageLine[] {
  const more = rows.length - shown.length;
  const unlisted = unlistedIn(machine);
  const wrong = faults.length > 0 || unlisted.length > 0;
  const kind = wrong
    ? more === 1
      ? 'line for a channel that is not OK'
      : 'lines for channels that are not OK'
    : 'channels';
  return [
    ...section(wrong ? 'What to treat as danger' : 'Its channels'),
    faultHeaders,
    ...shown.map((row) => faultLine(row, tools)),
    ...unlisted.slice(0, mostUnlisted).map((entry) => unlistedLine(entry, tools)),
    ...(unlisted.length > mostUnlisted
      ? [
          full(
            `${unlisted.length - mostUnlisted} more with settings are not in the channel list.`,
            'shownStrong',
          ),
        ]
      : []),
    ...(more > 0 ? [full(`${more} more ${kind}: see sheet '${names.annex}', page 1.`, 'shownStrong')] : []),
    ...(wrong ? fineLine(machine, faults) : []),
  ];
}

function fineLine(machine: Machine, faults: readonly ChannelRow[]): PageLine[] {
  const wrong = new Set(faults.map(({ channel }) => channel));
  const fine = machine.channels.filter((channel) => !wrong.has(channel));
  if (fine.length === 0) return [];
  const toCheck = fine.filter((channel) => entriesOf(machine, channel).length > 0);
  const clean = fine.filter((channel) => !toCheck.includes(channel));
  const told = (words: string, those: typeof fine): string[] =>
    those.length === 0
      ? []
      : [
          `${words}: ${listed(
            those.map(({ tag }) => tag),
            12,
            48,
          )}.`,
        ];
  const sentences = [
    ...told(verdictSigns.within, clean),
    ...told('• OK as far as known, but check', toCheck),
  ];
  return [full(sentences.join(' '), 'trip')];
}
