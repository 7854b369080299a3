import type { GroupResult, Report } from '../../audit/model/report.ts';
import { cell } from '../cells.ts';
import { heightOf } from '../look/lines.ts';
import { footerOf, leftOut, roomFor } from '../look/print.ts';
import { groupShades, shadesFor } from '../look/shades.ts';
import { decimalsFor } from '../look/significant.ts';
import { frameStyles, levelStyles } from '../look/styles.ts';
import type { ModelCell, ModelRow, ModelValue, SheetModel } from '../model.ts';
import { sheetNames, titleOf } from '../titles.ts';
import { formulasOf, groupFormulas, tripWord } from './formulas.ts';
import { mostSeats, seatCells, seatsFor } from './seats.ts';

const headerRow = 4;
/** Columns before the members; `votesNeeded` is the letter of the third. */
const columns = [
  ['Group', 22],
  ['Voting', 9],
  ['Votes needed M', 9],
  ['Threshold', 14],
  ['Unit', 8],
  ['Meant to act at', 10],
  ['Really acts at', 10],
  ['Can it trip?', 12],
  ['Decided by', 18],
  ['Limit', 9],
  ['Findings', 60],
  ['Members not shown', 10],
] as const;
const tripColumn = 8;
/** Columns under the caution at the top. */
const cautionSpan = 11;
const widths = columns.map(([, width]) => width);
const wrapping = columns.map(([header, width]) =>
  header === 'Findings' || header === 'Decided by' ? width : 0,
);

/** One row a voting group and threshold, its members beside it, with the vote as a native formula. */
export function groupsSheet(report: Report): SheetModel {
  const { groups } = report;
  const seats = seatsFor(groups, columns.length + 1);
  const shown = roomFor(groups.length, headerRow);
  const lastRow = headerRow + Math.max(shown, 1);
  return {
    name: sheetNames.groups,
    widths: [...widths, ...seats.headers.map((header) => (header.endsWith('set at') ? 11 : 16))],
    styles: { ...frameStyles, ...levelStyles },
    formulas: groupFormulas(seats),
    rowCount: lastRow,
    *rows() {
      yield { height: 24, cells: [cell(titleOf('groups', report), 'title')] };
      yield { height: 45, cells: [cell(report.caution + leftOut(groups.length, shown), 'caution')] };
      yield { cells: [cell(reading, 'subtitle')] };
      yield {
        height: 45,
        cells: [...columns.map(([header]) => header), ...seats.headers].map((header) =>
          cell(header, 'header'),
        ),
      };
      if (shown === 0)
        yield { cells: [cell('No voting group is named in the monitor settings.', 'subtitle')] };
      for (let index = 0; index < shown; index++) {
        const group = groups[index];
        if (group) yield groupRow(group, seats.count);
      }
    },
    freeze: { rows: headerRow, columns: 1 },
    filter: { top: headerRow, left: 1, bottom: lastRow, right: columns.length + seats.headers.length },
    merges: [{ top: 2, left: 1, bottom: 2, right: cautionSpan }],
    shades: shadesFor(
      { top: headerRow + 1, left: tripColumn, bottom: lastRow, right: tripColumn },
      groupShades,
    ),
    print: { landscape: true, repeatRows: { from: headerRow, to: headerRow }, footer: footerOf(report) },
  };
}

const reading =
  'An M-out-of-N group acts at the M-th smallest level of its members, counted away from zero; a member in bypass or out of reach has no vote.';

function groupRow(group: GroupResult, seatCount: number): ModelRow {
  const { name, voting, threshold, unit, intended, effective, canTrip, decidedBy, limit, members } = group;
  const level = `level${decimalsFor(intended ?? effective)}`;
  const own = formulasOf(threshold);
  const fits = members.length <= mostSeats;
  const calculated = (value: ModelValue, style: string, formula: number): ModelCell | undefined =>
    fits ? { value, style, formula } : cell(value, style);
  const said = group.findings.map((finding) => finding.message).join(' · ');
  const decided = decidedBy.join(', ');
  return {
    height: heightOf(['', '', '', '', '', '', '', '', decided, '', said], wrapping, 6),
    cells: [
      cell(name, 'strong'),
      cell(voting, 'text'),
      cell(Number.parseInt(voting, 10), 'count'),
      cell(threshold, 'text'),
      cell(unit, 'text'),
      calculated(intended, level, own.intended),
      calculated(effective, level, own.effective),
      calculated(tripWord(threshold, canTrip), 'strong', own.canTrip),
      cell(decided, 'wrapped'),
      cell(limit, level),
      cell(said, 'wrapped'),
      cell(fits ? null : members.length - mostSeats, 'count'),
      ...seatCells(group, seatCount, level),
    ],
  };
}
