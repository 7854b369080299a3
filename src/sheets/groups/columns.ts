import type { GroupResult } from '../../audit/model/report.ts';
import { thresholdName } from '../../audit/model/threshold.ts';
import { columnList, type Column, type ColumnList } from '../column.ts';
import { formulaList, type FormulaList } from '../formulaList.ts';
import { givenStyle } from '../style/significant.ts';
import { verdictStyle } from '../style/verdictStyles.ts';
import { chanceText } from './chanceText.ts';
import { outText, signed, tripWord, liveVotes, groupAction } from './groupWords.ts';
import {
  direction,
  level,
  memberColumns,
  mostMembers,
  voteFormulas,
  type GroupLine,
  type VoteFormulas,
} from './memberColumns.ts';

const hasTripped = ({ group }: GroupLine): boolean => group.liveVoting === 'tripped';
const fits = ({ group }: GroupLine): boolean => group.members.length <= mostMembers;
const isVoted = (line: GroupLine): boolean => fits(line) && !hasTripped(line);

/** Columns of a group; those of its members follow. */
function groupColumns(formulas: VoteFormulas): readonly Column<GroupLine>[] {
  return [
    { id: 'group', header: 'Group', width: 22, style: 'strong', value: ({ group }) => group.name },
    { id: 'machine', header: 'Machine', width: 20, style: 'wrapped', value: ({ group }) => group.machine },
    { id: 'voting', header: 'Voting', width: 9, style: 'text', value: ({ group }) => group.voting },
    {
      id: 'votesNeeded',
      header: 'Votes needed M',
      width: 9,
      style: 'count',
      value: ({ group }) => Number.parseInt(group.voting, 10),
    },
    {
      id: 'votesNow',
      header: 'Votes needed now',
      width: 9,
      style: 'count',
      value: ({ group }) => liveVotes(group),
    },
    {
      id: 'threshold',
      header: 'Threshold',
      width: 14,
      style: 'text',
      value: ({ group: { threshold, multiplier } }) => thresholdName({ name: threshold, multiplier }),
    },
    {
      id: 'does',
      header: 'What it does',
      width: 14,
      style: ({ group, early }) => verdictStyle(groupAction(group, early)[1]),
      headerStyle: 'header',
      value: ({ group, early }) => groupAction(group, early)[0],
    },
    { id: 'unit', header: 'Unit', width: 8, style: 'text', value: ({ group }) => group.unit },
    {
      id: 'intended',
      header: 'Meant to act at',
      width: 10,
      style: level,
      value: ({ group }) => group.intended,
      formula: ({ group }) => formulas[direction(group.threshold)].intended,
      applies: fits,
    },
    {
      id: 'effective',
      header: 'Really acts at',
      width: 10,
      style: level,
      value: ({ group }) => group.effective,
      formula: ({ group }) => formulas[direction(group.threshold)].effective,
      applies: isVoted,
    },
    {
      id: 'canTrip',
      header: 'Can it trip?',
      width: 12,
      style: 'strong',
      value: (line) =>
        hasTripped(line) ? 'has tripped' : tripWord(line.group.threshold, line.group.canTrip),
      formula: ({ group }) => formulas.canTrip(tripWord(group.threshold, false)),
      applies: isVoted,
    },
    {
      id: 'late',
      header: 'Late',
      width: 7,
      style: 'centred',
      value: ({ group }) => (group.late ? 'yes' : 'no'),
    },
    {
      id: 'wrong',
      header: 'What is wrong',
      width: 50,
      style: 'wrapped',
      value: ({ action }) => action.map(({ headline }) => headline).join(' '),
    },
    {
      id: 'doNext',
      header: 'Do next',
      width: 36,
      style: 'wrapped',
      value: ({ action }) => [...new Set(action.map(({ doNext }) => doNext))].join(' '),
    },
    {
      id: 'decidedBy',
      header: 'Decided by',
      width: 18,
      style: 'wrapped',
      value: ({ group }) => group.decidedBy.join(', '),
    },
    { id: 'out', header: 'Members out', width: 30, style: 'wrapped', value: ({ group }) => outText(group) },
    {
      id: 'limit',
      header: 'Limit',
      width: 9,
      style: ({ group }) => givenStyle(group.limit),
      value: ({ group }) => group.limit,
    },
    {
      id: 'beyondLimit',
      header: 'Beyond the limit',
      width: 9,
      style: 'centred',
      value: ({ group }) => (group.limit === null ? null : group.beyondLimit ? 'yes' : 'no'),
    },
    {
      id: 'low',
      header: 'Acts between, low',
      width: 10,
      style: level,
      value: ({ group }) => signed(group, group.chance?.low),
    },
    {
      id: 'high',
      header: 'Acts between, high',
      width: 10,
      style: level,
      value: ({ group }) => signed(group, group.chance?.high),
    },
    {
      id: 'laterThan',
      header: 'Later than',
      width: 10,
      style: level,
      value: ({ group }) => signed(group, group.chance?.limit),
    },
    {
      id: 'later',
      header: 'Probability later',
      width: 11,
      style: 'chance',
      value: ({ group }) => group.chance?.later ?? null,
    },
    {
      id: 'chance',
      header: 'How sure',
      width: 90,
      style: 'wrapped',
      value: ({ group }) => chanceText(group),
    },
    {
      id: 'acted',
      header: 'As found, really acted at',
      width: 11,
      style: level,
      value: ({ group }) => group.asFound?.effective ?? null,
    },
    {
      id: 'couldTrip',
      header: 'As found, could it trip?',
      width: 12,
      style: 'strong',
      value: ({ group: { asFound, threshold } }) => asFound && tripWord(threshold, asFound.canTrip),
    },
    {
      id: 'decidedByThen',
      header: 'As found, decided by',
      width: 18,
      style: 'wrapped',
      value: ({ group }) => group.asFound?.decidedBy.join(', ') ?? null,
    },
    {
      id: 'notShown',
      header: 'Members not shown',
      width: 10,
      style: 'count',
      value: (line) => (fits(line) ? null : line.group.members.length - mostMembers),
    },
  ];
}

/** Columns that go on paper, under the caution at the top; the workings to their right are for the screen. */
export const lastPrinted = 'out';

/**
 * The columns of a sheet of these groups, with room for the members of the largest, and their formulas: all of them are
 * known before the first row is made.
 */
export function groupList(groups: readonly GroupResult[]): {
  readonly list: ColumnList<GroupLine>;
  readonly formulas: FormulaList;
} {
  const largest = groups.reduce((most, { members }) => Math.max(most, members.length), 1);
  const count = Math.min(largest, mostMembers);
  const formulas = voteFormulas(count);
  const { away, counter, canTrip } = formulas;
  const list = columnList([...groupColumns(formulas), ...memberColumns(count)], { mostLines: 6 });
  const all = [away, counter].flatMap(({ intended, effective }) => [intended, effective]);
  return {
    list,
    formulas: formulaList([...all, canTrip('cannot trip'), canTrip('cannot act')].map(list.spelled)),
  };
}
