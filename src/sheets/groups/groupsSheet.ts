import type { Report } from '../../audit/model/report.ts';
import { cell } from '../cells.ts';
import { footerOf, leftOut, roomFor } from '../style/print.ts';
import { groupShades, shadesFor, verdictShades, yesShades } from '../style/shades.ts';
import { frameStyles, levelStyles } from '../style/styles.ts';
import type { SheetModel } from '../model.ts';
import { sheetNames, tableNames, titleOf } from '../titles.ts';
import { groupList, lastPrinted } from './columns.ts';
import { earlyGroups } from './earlyGroups.ts';
import { headerRow, worstFirst } from './worstFirst.ts';

/** One row a voting group and threshold as they are now, worst first, its members beside it, with the vote as a native formula. */
export function groupsSheet(report: Report): SheetModel {
  const { groups, actionOf } = worstFirst(report);
  const { list, formulas } = groupList(groups);
  const isEarly = earlyGroups(report);
  const shown = roomFor(groups.length, headerRow);
  const lastRow = headerRow + Math.max(shown, 1);
  const printedColumns = list.numberOf(lastPrinted);
  const below = (id: string) => list.below(id, headerRow + 1, lastRow);
  return {
    name: sheetNames.groups,
    widths: list.widths,
    styles: { ...frameStyles, ...levelStyles },
    formulas: formulas.all,
    rowCount: lastRow,
    *rows() {
      yield { height: 24, cells: [cell(titleOf('groups', report), 'title')] };
      yield { height: 45, cells: [cell(report.caution + leftOut(groups.length, shown), 'caution')] };
      yield { cells: [cell(reading, 'subtitle')] };
      yield { height: 45, cells: list.headers };
      if (shown === 0)
        yield { cells: [cell('No voting group is named in the monitor settings.', 'subtitle')] };
      for (const group of groups.slice(0, shown))
        yield list.row({ group, action: actionOf(group), early: isEarly(group) }, formulas.place);
    },
    freeze: { rows: headerRow, columns: 1 },
    table: {
      name: tableNames.groups,
      area: { top: headerRow, left: 1, bottom: lastRow, right: list.columns.length },
    },
    merges: [{ top: 2, left: 1, bottom: 2, right: printedColumns }],
    shades: [
      ...['canTrip', 'couldTrip'].flatMap((id) => shadesFor(below(id), groupShades)),
      ...shadesFor(below('late'), { yes: verdictShades.late }),
      ...shadesFor(below('beyondLimit'), yesShades),
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
