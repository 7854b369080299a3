import { memberReasonText } from '../../audit/advise/groupSentences.ts';
import type { Attention, GroupMember, GroupResult } from '../../audit/model/report.ts';
import type { ThresholdName } from '../../audit/model/threshold.ts';
import type { Column } from '../column.ts';
import { levelDecimals, stylesOfLevels } from '../style/significant.ts';

/** Members of a group that stand beside it. A larger group, which no voting has, is not calculated by formulas. */
export const mostMembers = 24;

/** A group and what needs action of it. */
export interface GroupLine {
  readonly group: GroupResult;
  readonly action: readonly Attention[];
  /** A member that decides is early. */
  readonly early: boolean;
}

/** Style of a level of the group. */
export const level = ({ group: { intended, effective } }: GroupLine): string =>
  stylesOfLevels(levelDecimals(intended ?? effective, null)).level;

/** Columns of the members to the right of a group: pairs of tag and where it acts, then where each is set. */
export function memberColumns(count: number): readonly Column<GroupLine>[] {
  const numbers = Array.from({ length: count }, (_, index) => index + 1);
  const of = ({ group }: GroupLine, number: number): GroupMember | undefined => group.members[number - 1];
  return [
    ...numbers.flatMap((number): Column<GroupLine>[] => [
      {
        id: `member${number}`,
        header: `Member ${number}`,
        width: 16,
        style: 'text',
        value: (line) => of(line, number)?.tag ?? null,
      },
      {
        id: `member${number}acts`,
        header: `Member ${number} acts at`,
        width: 16,
        // A text stands where one cannot act, so that formulas pass over it.
        style: (line) => ((of(line, number)?.effective ?? null) === null ? 'wrapped' : level(line)),
        value: (line) => {
          const member = of(line, number);
          return member ? (member.effective ?? idleWords(member)) : null;
        },
      },
    ]),
    ...numbers.map((number): Column<GroupLine> => ({
      id: `member${number}set`,
      header: `Member ${number} set at`,
      width: 11,
      style: level,
      value: (line) => of(line, number)?.setpoint ?? null,
    })),
  ];
}

function idleWords({ why }: GroupMember): string {
  return why === null ? 'cannot act' : memberReasonText(why);
}

type Direction = 'away' | 'counter';

export interface VoteFormulas extends Readonly<
  Record<Direction, { readonly intended: string; readonly effective: string }>
> {
  readonly canTrip: (word: string) => string;
}

/**
 * An M-out-of-N group acts at the M-th smallest of its members' levels, counted away from zero: for the negative levels
 * of counter thresholds that is the M-th largest. Texts (tags, members that cannot act) are passed over.
 */
export function voteFormulas(count: number): VoteFormulas {
  const [acts, set] = [`[member1]:[member${count}acts]`, `[member1set]:[member${count}set]`];
  const voted = (range: string, pick: string, votes: string): string =>
    `IF(COUNT(${range})<${votes},"",${pick}(${range},${votes}))`;
  const way = (pick: string): VoteFormulas[Direction] => ({
    intended: voted(set, pick, '[votesNeeded]'),
    effective: voted(acts, pick, '[votesNow]'),
  });
  return {
    away: way('SMALL'),
    counter: way('LARGE'),
    canTrip: (word) => `IF(COUNT(${acts})<[votesNow],"${word}","yes")`,
  };
}

export function direction(threshold: ThresholdName): Direction {
  return threshold.startsWith('counter') ? 'counter' : 'away';
}
