import type { ChannelResult, GroupResult, GroupVote } from '../../audit/model/report.ts';
import { cell } from '../cells.ts';
import { tripWord } from '../groups/formulas.ts';
import { wide, type Entry } from '../look/layout.ts';
import { decimalsFor } from '../look/significant.ts';
import { groupSentence, thresholdSentence } from '../summary/sentence.ts';
import { isLate } from '../../audit/judge/groups/groupFindings.ts';
import type { Policy } from '../../audit/model/policy.ts';
import { channelAsLeft } from './asLeft.ts';
import { startUp } from './channelSentences.ts';
import { clipped, listed } from './clipped.ts';
import type { Machine } from '../machines.ts';
import { heading, line, space, table, type Block, type PageLine } from './page.ts';
import { thresholdName, trips } from '../../audit/model/threshold.ts';

/** Which trips can't be relied on to act, and why: as found, and as left where that was judged. */
export function idleTripBlocks({ channels, groups }: Machine): Block[] {
  const idle = [...groups.flatMap(groupLines), ...channels.flatMap(channelLines)];
  const [first = line('None, as far as audited.'), ...rest] = idle;
  return [
    [space, ...heading('Trips that can’t be relied on to act'), first],
    ...rest.map((one): Block => [one]),
  ];
}

function groupLines(group: GroupResult): PageLine[] {
  const { name, threshold, canTrip, asLeft } = group;
  if (!trips(threshold)) return [];
  const line = (when: string, words: string) => idleLine(`group ${name}`, threshold + when, words);
  return [
    ...(canTrip ? [] : [line(asLeft ? ', as found' : '', groupSentence(group))]),
    ...(asLeft?.canTrip === false ? [line(', as left', tooFewLeft)] : []),
  ];
}

const tooFewLeft = 'Too few of its members can act as left: see the channels above.';

/** Why a group cannot trip, as its members stand now. */
export function idleSentence(group: GroupResult): string {
  return group.canTrip ? tooFewLeft : groupSentence(group);
}

function unreachableLines(channel: ChannelResult, when: string): PageLine[] {
  return channel.thresholds
    .filter((threshold) => threshold.verdict === 'unreachable' && trips(threshold.name))
    .map((threshold) => {
      const words = thresholdSentence(channel, threshold).replace(startUp, '');
      const what = thresholdName(threshold) + (threshold.multiplier === 1 ? '' : ', start-up');
      return idleLine(channel.tag, what + when, words);
    });
}

function channelLines(channel: ChannelResult): PageLine[] {
  const { tag, inputs, verdict } = channel;
  const left = channelAsLeft(channel);
  const lines = [
    ...unreachableLines(channel, left ? ', as found' : ''),
    ...(left ? unreachableLines(left, ', as left') : []),
  ];
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

/** Where the vote of each group really acts, and which channel decides; as left too where members were judged so. */
export function groupBlocks({ groups }: Machine, { tolerance }: Policy): Block[] {
  const isOff = ({ asLeft, intended }: GroupResult) =>
    asLeft !== null &&
    (!asLeft.canTrip || isLate(Math.abs(asLeft.effective ?? NaN), Math.abs(intended ?? NaN), tolerance));
  const shown = groups.filter((group) => trips(group.threshold) || group.findings.length > 0 || isOff(group));
  if (shown.length === 0) return [];
  return table([space, ...heading('Voting groups')], headers, shown.flatMap(voteLines));
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

function voteLines(group: GroupResult): PageLine[] {
  const { asLeft, members, threshold } = group;
  const idle = members
    .filter((member) => member.effective === null)
    .map((member) => `${clipped(member.tag, 40)} (${member.why ?? 'cannot act'})`);
  const never = tripWord(threshold, false);
  const found = voteLine(group, group, asLeft ? ', as found' : '', `${never}: ${idle.join(', ')}`);
  return asLeft ? [found, voteLine(group, asLeft, ', as left', `${never}: see its channels above`)] : [found];
}

function voteLine(group: GroupResult, vote: GroupVote, when: string, whyNot: string): PageLine {
  const { name, voting, threshold, intended, unit } = group;
  const { effective, canTrip, decidedBy } = vote;
  const level = `level${decimalsFor(intended ?? effective)}`;
  const acts: Entry = canTrip ? (cell(effective, level) ?? cell('–', 'dash')) : cell('–', 'dash');
  return {
    entries: [
      wide(clipped(name), 'name', 2),
      cell(voting, 'text'),
      wide(threshold + when, 'wrapped', 2),
      cell(intended, level) ?? cell('–', 'dash'),
      acts,
      cell(unit, 'centred'),
      wide(canTrip ? listed(decidedBy) : whyNot, 'wrapped', 4),
    ],
  };
}
