import type { ChannelResult, GroupResult } from '../../audit/report/types.ts';
import { cell } from '../cells.ts';
import { tripWord } from '../groups/formulas.ts';
import { wide, type Entry } from '../look/layout.ts';
import { decimalsFor } from '../look/significant.ts';
import { groupSentence, thresholdSentence } from '../summary/sentence.ts';
import { asFound } from './asLeft.ts';
import { startUp } from './channelSentences.ts';
import { clipped, listed } from './clipped.ts';
import type { Machine } from '../machines.ts';
import { heading, line, space, table, type Block, type PageLine } from './page.ts';

/** Which trips can't be relied on to act, and why. */
export function idleTripBlocks({ channels, groups }: Machine): Block[] {
  const idle = [...groups.filter(cannotTrip).map(groupLine), ...channels.flatMap(channelLines)];
  const [first = line('None, as far as audited.'), ...rest] = idle;
  return [
    [space, ...heading(asFound('Trips that can’t be relied on to act', channels)), first],
    ...rest.map((one): Block => [one]),
  ];
}

function cannotTrip({ threshold, canTrip }: GroupResult): boolean {
  return !canTrip && threshold.endsWith('danger');
}

function groupLine(group: GroupResult): PageLine {
  return idleLine(`group ${group.name}`, group.threshold, groupSentence(group));
}

function channelLines(channel: ChannelResult): PageLine[] {
  const { tag, thresholds, inputs, verdict } = channel;
  const lines = thresholds
    .filter((threshold) => threshold.verdict === 'unreachable' && threshold.name.endsWith('danger'))
    .map((threshold) => {
      const { name, multiplier } = threshold;
      const words = thresholdSentence(channel, threshold).replace(startUp, '');
      return idleLine(tag, multiplier === 1 ? name : `${name} × ${multiplier}, start-up`, words);
    });
  if (inputs.bypass === false || verdict === 'incomplete') return lines;
  const why = inputs.bypass === true ? 'In bypass: it trips nothing.' : 'Its bypass mark is not understood.';
  return [...lines, idleLine(tag, 'all', why)];
}

function idleLine(name: string, what: string, why: string): PageLine {
  return {
    entries: [
      wide(clipped(name), 'name', 2),
      wide(what, 'wrapped', 2),
      wide(clipped(why, 1000), 'wrapped', 8),
    ],
  };
}

/** Where the vote of each group really acts, and which channel decides. */
export function groupBlocks({ groups, channels }: Machine): Block[] {
  const shown = groups.filter(
    ({ threshold, findings }) => threshold.endsWith('danger') || findings.length > 0,
  );
  if (shown.length === 0) return [];
  return table([space, ...heading(asFound('Voting groups', channels))], headers, shown.map(voteLine));
}

const headers: PageLine = {
  height: 27,
  entries: [
    wide('Group', 'labelLeft', 2),
    cell('Voting', 'labelLeft'),
    wide('Threshold', 'labelLeft', 2),
    cell('Meant to act at', 'label'),
    cell('Really acts at', 'label'),
    cell('Unit', 'labelCentred'),
    wide('Decided by, or why not', 'labelLeft', 4),
  ],
};

function voteLine(group: GroupResult): PageLine {
  const { name, voting, threshold, intended, effective, unit, canTrip, decidedBy } = group;
  const level = `level${decimalsFor(intended ?? effective)}`;
  const acts: Entry = canTrip ? (cell(effective, level) ?? cell('–', 'dash')) : cell('–', 'dash');
  const idle = group.members
    .filter((member) => member.effective === null)
    .map((member) => `${clipped(member.tag, 40)} (${member.why ?? 'cannot act'})`);
  return {
    entries: [
      wide(clipped(name), 'name', 2),
      cell(voting, 'text'),
      wide(threshold, 'text', 2),
      cell(intended, level) ?? cell('–', 'dash'),
      acts,
      cell(unit, 'centred'),
      wide(canTrip ? listed(decidedBy) : `${tripWord(threshold, canTrip)}: ${idle.join(', ')}`, 'wrapped', 4),
    ],
  };
}
