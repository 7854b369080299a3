import type { Attention, GroupResult, Report } from '../../audit/model/report.ts';
import { verdictStyle } from '../look/verdictStyles.ts';
import { thresholdName, type ThresholdVerdict } from '../../audit/model/threshold.ts';
import { cell } from '../cells.ts';
import { heightOf } from '../look/lines.ts';
import { footerOf, leftOut, roomFor } from '../look/print.ts';
import { groupShades, shadesFor, verdictShades, yesShades } from '../look/shades.ts';
import { givenStyle, levelDecimals, stylesOfLevels } from '../look/significant.ts';
import { frameStyles, levelStyles } from '../look/styles.ts';
import type { ModelCell, ModelRow, ModelValue, SheetModel } from '../model.ts';
import { sheetNames, tableNames, titleOf } from '../titles.ts';
import { chanceText } from './chanceText.ts';
import { formulasOf, groupFormulas, tripWord } from './formulas.ts';
import { headerRow, worstFirst } from './worstFirst.ts';
import { mostSeats, voterCells, seatsFor } from './voters.ts';

/** Columns before the members; `votesNeeded` is the letter of the fourth. */
const columns = [
  ['Group', 22],
  ['Machine', 20],
  ['Voting', 9],
  ['Votes needed M', 9],
  ['Votes needed now', 9],
  ['Threshold', 14],
  ['What it does', 14],
  ['Unit', 8],
  ['Meant to act at', 10],
  ['Really acts at', 10],
  ['Can it trip?', 12],
  ['Late', 7],
  ['What is wrong', 50],
  ['Do next', 36],
  ['Decided by', 18],
  ['Members out', 30],
  ['Limit', 9],
  ['Beyond the limit', 9],
  ['Acts between, low', 10],
  ['Acts between, high', 10],
  ['Later than', 10],
  ['Probability later', 11],
  ['How sure', 90],
  ['As found, really acted at', 11],
  ['As found, could it trip?', 12],
  ['As found, decided by', 18],
  ['Members not shown', 10],
] as const;
type Header = (typeof columns)[number][0];

function columnNumber(wanted: Header): number {
  return columns.findIndex(([header]) => header === wanted) + 1;
}

/** Columns that go on paper, under the caution at the top; the workings to their right are for the screen. */
const printedColumns = columnNumber('Members out');
const widths = columns.map(([, width]) => width);
const wrapped = new Set<Header>([
  'Machine',
  'Decided by',
  'Members out',
  'How sure',
  'What is wrong',
  'Do next',
  'As found, decided by',
]);
const wrapping = columns.map(([header, width]) => (wrapped.has(header) ? width : 0));

/** One row a voting group and threshold as they are now, worst first, its members beside it, with the vote as a native formula. */
export function groupsSheet(report: Report): SheetModel {
  const { groups, actionOf } = worstFirst(report);
  const voters = seatsFor(groups, columns.length + 1);
  const shown = roomFor(groups.length, headerRow);
  const lastRow = headerRow + Math.max(shown, 1);
  const below = (header: Header) => {
    const column = columnNumber(header);
    return { top: headerRow + 1, left: column, bottom: lastRow, right: column };
  };
  return {
    name: sheetNames.groups,
    widths: [...widths, ...voters.headers.map((header) => (header.endsWith('set at') ? 11 : 16))],
    styles: { ...frameStyles, ...levelStyles },
    formulas: groupFormulas(voters),
    rowCount: lastRow,
    *rows() {
      yield { height: 24, cells: [cell(titleOf('groups', report), 'title')] };
      yield { height: 45, cells: [cell(report.caution + leftOut(groups.length, shown), 'caution')] };
      yield { cells: [cell(reading, 'subtitle')] };
      yield {
        height: 45,
        cells: [...columns.map(([header]) => header), ...voters.headers].map((header) =>
          cell(header, 'header'),
        ),
      };
      if (shown === 0)
        yield { cells: [cell('No voting group is named in the monitor settings.', 'subtitle')] };
      for (let index = 0; index < shown; index++) {
        const group = groups[index];
        if (group) yield groupRow(group, actionOf(group), voters.count);
      }
    },
    freeze: { rows: headerRow, columns: 1 },
    table: {
      name: tableNames.groups,
      area: { top: headerRow, left: 1, bottom: lastRow, right: columns.length + voters.headers.length },
    },
    merges: [{ top: 2, left: 1, bottom: 2, right: printedColumns }],
    shades: [
      ...(['Can it trip?', 'As found, could it trip?'] as const).flatMap((header) =>
        shadesFor(below(header), groupShades),
      ),
      ...shadesFor(below('Late'), { yes: verdictShades.late }),
      ...shadesFor(below('Beyond the limit'), yesShades),
    ],
    print: {
      landscape: true,
      repeatRows: { from: headerRow, to: headerRow },
      footer: footerOf(report),
      area: { top: 1, left: 1, bottom: lastRow, right: printedColumns },
    },
  };
}

const reading =
  'An M-out-of-N group acts at the M-th smallest level of its members, counted away from zero; a member that cannot act has no vote, one out of service what the policy says.';

function groupRow(group: GroupResult, action: readonly Attention[], seatCount: number): ModelRow {
  const { name, machine, voting, threshold, unit, intended, effective, canTrip, decidedBy, limit, members } =
    group;
  // How the vote was found, where a member was measured again since: history.
  const { asFound } = group;
  const { level } = stylesOfLevels(levelDecimals(intended ?? effective, null));
  const own = formulasOf(threshold);
  const tripped = group.liveVoting === 'tripped';
  const fits = members.length <= mostSeats;
  const calculated = (value: ModelValue, style: string, formula: number): ModelCell | undefined =>
    fits ? { value, style, formula } : cell(value, style);
  const voted = tripped ? cell : calculated;
  const cells: Readonly<Record<Header, ModelCell | undefined>> = {
    Group: cell(name, 'strong'),
    Machine: cell(machine, 'wrapped'),
    Voting: cell(voting, 'text'),
    'Votes needed M': cell(Number.parseInt(voting, 10), 'count'),
    'Votes needed now': cell(votesNow(group), 'count'),
    Threshold: cell(thresholdName({ name: threshold, multiplier: group.multiplier }), 'text'),
    'What it does': whatItDoes(group),
    Unit: cell(unit, 'text'),
    'Meant to act at': calculated(intended, level, own.intended),
    'Really acts at': voted(effective, level, own.effective),
    'Can it trip?': voted(tripped ? 'has tripped' : tripWord(threshold, canTrip), 'strong', own.canTrip),
    Late: cell(group.late ? 'yes' : 'no', 'centred'),
    'Decided by': cell(decidedBy.join(', '), 'wrapped'),
    'Members out': cell(outText(group), 'wrapped'),
    Limit: cell(limit, givenStyle(limit)),
    'Beyond the limit': cell(limit === null ? null : group.beyondLimit ? 'yes' : 'no', 'centred'),
    'Acts between, low': cell(signed(group, group.chance?.low), level),
    'Acts between, high': cell(signed(group, group.chance?.high), level),
    'Later than': cell(signed(group, group.chance?.limit), level),
    'Probability later': cell(group.chance?.later ?? null, 'chance'),
    'How sure': cell(chanceText(group), 'wrapped'),
    'What is wrong': cell(action.map(({ headline }) => headline).join(' '), 'wrapped'),
    'Do next': cell([...new Set(action.map(({ doNext }) => doNext))].join(' '), 'wrapped'),
    'As found, really acted at': cell(asFound?.effective ?? null, level),
    'As found, could it trip?': cell(asFound && tripWord(threshold, asFound.canTrip), 'strong'),
    'As found, decided by': cell(asFound?.decidedBy.join(', ') ?? null, 'wrapped'),
    'Members not shown': cell(fits ? null : members.length - mostSeats, 'count'),
  };
  const row = columns.map(([header]) => cells[header]);
  const texts = row.map((one, index) => (wrapping[index] ? String(one?.value ?? '') : ''));
  return { height: heightOf(texts, wrapping, 6), cells: [...row, ...voterCells(group, seatCount, level)] };
}

/** What the group does as audited, shaded as the verdict of a threshold that does the same. */
function whatItDoes({
  threshold,
  canTrip,
  liveVoting,
  late,
  beyondLimit,
}: GroupResult): ModelCell | undefined {
  const [words, verdict]: readonly [string, ThresholdVerdict] = !canTrip
    ? [tripWord(threshold, false), 'unreachable']
    : liveVoting === 'tripped'
      ? ['has tripped', 'early']
      : beyondLimit
        ? ['beyond limit', 'late']
        : late
          ? ['late', 'late']
          : ['OK', 'within'];
  return cell(words, verdictStyle(verdict));
}

/** A level away from zero with the sign of the threshold. */
function signed({ threshold }: GroupResult, level: number | null | undefined): number | null {
  if (level === null || level === undefined) return null;
  return threshold.startsWith('counter') ? -level : level;
}

/** Of the live members; those that were needed where no vote is left. */
function votesNow({ voting, liveVoting }: GroupResult): number {
  const left = Number.parseInt(liveVoting, 10);
  if (!Number.isNaN(left)) return left;
  return liveVoting === 'tripped' ? 0 : Number.parseInt(voting, 10);
}

/** `B in bypass: no vote (not said; ask)`, and the vote that is left. */
function outText({ out, liveVoting }: GroupResult): string | null {
  if (out.length === 0) return null;
  const each = out.map(({ tag, because, policy, saidBy }) => {
    const state = because === 'bypassed' ? 'in bypass' : 'marked faulty';
    const vote = { 'no-trip': 'no vote', trip: 'its vote counts', reduce: 'the others vote' }[policy];
    return `${tag} ${state}: ${vote}${saidBy === null ? ' (not said; ask)' : ''}`;
  });
  return `${each.join('; ')}. Left: ${liveVoting}.`;
}
