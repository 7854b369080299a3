import type { GroupResult, GroupVote } from '../../audit/model/report.ts';
import { thresholdName } from '../../audit/model/threshold.ts';
import { cell } from '../cells.ts';
import { wide } from '../style/layout.ts';
import { givenStyle, levelDecimals } from '../style/significant.ts';
import type { Machine } from '../machines.ts';
import { heading, table, type Block } from './annexPages.ts';
import { type PageLine, clipped, listed } from './paper.ts';

/** Where the vote of each group acts, now and as it was found. */
export function voteBlocks({ groups }: Machine): Block[] {
  return table(
    heading('Voting groups'),
    headers,
    groups.flatMap((group) => [
      voteLine(group, group, ''),
      ...(group.asFound ? [voteLine(group, group.asFound, ', as found')] : []),
    ]),
  );
}

const headers: PageLine = {
  height: 28,
  entries: [
    wide('Group', 'labelLeft', 2),
    cell('Voting', 'labelLeft'),
    wide('Threshold', 'labelLeft', 2),
    cell('Meant at', 'label'),
    cell('Really acts at', 'label'),
    cell('Unit', 'labelCentred'),
    wide('Decided by; who can’t be counted on', 'labelLeft', 4),
  ],
};

function voteLine(group: GroupResult, vote: GroupVote, when: string): PageLine {
  const { name, voting, intended, unit, members } = group;
  const level = `level${levelDecimals(intended ?? vote.effective, null)}`;
  const idle = members.flatMap(({ tag, why }) => (why === null ? [] : [`${clipped(tag, 40)}: ${why}`]));
  const by = vote.canTrip ? `by ${listed(vote.decidedBy, 6, 40)}` : 'cannot act';
  const words = when === '' && idle.length > 0 ? `${by}; ${listed(idle, 6)}` : by;
  return {
    entries: [
      wide(clipped(name), 'name', 2),
      cell(voting, 'text'),
      wide(thresholdName({ name: group.threshold, multiplier: group.multiplier }) + when, 'wrapped', 2),
      cell(intended, givenStyle(intended)) ?? cell('–', 'dash'),
      cell(vote.effective, level) ?? cell('–', 'dash'),
      cell(unit, 'centred'),
      wide(words, vote.canTrip ? 'wrapped' : 'warned', 4),
    ],
  };
}
