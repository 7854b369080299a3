import type { Report } from '../../audit/model/report.ts';
import { cell } from '../cells.ts';
import { footerOf, leftOut, roomFor } from '../style/print.ts';
import { shadesFor, verdictShades } from '../style/shades.ts';
import { frameStyles, levelStyles } from '../style/styles.ts';
import type { SheetModel } from '../model.ts';
import { sheetNames, tableNames, titleOf } from '../titles.ts';
import { list, printedColumns } from './columns.ts';
import type { AsLeftLine } from './lines.ts';

const headerRow = 4;

const reading =
  'Channels measured again after a correction count as left everywhere; here is what was found, beside it. What was not measured again stays as found, but for the zero of a position, of which nothing is known then. Late from is the last day known to be good.';

/** The sheet of history: one row a threshold that was measured again, as found beside as left; what is still late first. */
export function asLeftSheet(report: Report, lines: readonly AsLeftLine[]): SheetModel {
  const shown = roomFor(lines.length, headerRow);
  const lastRow = headerRow + shown;
  return {
    name: sheetNames['as found and as left'],
    widths: list.widths,
    styles: { ...frameStyles, ...levelStyles },
    formulas: list.formulas,
    rowCount: lastRow,
    *rows() {
      yield { height: 24, cells: [cell(titleOf('as found and as left', report), 'title')] };
      yield { height: 45, cells: [cell(report.caution + leftOut(lines.length, shown), 'caution')] };
      yield { cells: [cell(reading, 'subtitle')] };
      yield { height: 45, cells: list.headers };
      for (const line of lines.slice(0, shown)) yield list.row(line);
    },
    freeze: { rows: headerRow, columns: 1 },
    ...(shown > 0 && {
      table: {
        name: tableNames['as found and as left'],
        area: { top: headerRow, left: 1, bottom: lastRow, right: list.columns.length },
      },
    }),
    merges: [{ top: 2, left: 1, bottom: 2, right: printedColumns }],
    shades: shadesFor(list.below('goesOn', headerRow + 1, lastRow), { yes: verdictShades.late }),
    print: {
      landscape: true,
      repeatRows: { from: headerRow, to: headerRow },
      footer: footerOf(report),
      area: { top: 1, left: 1, bottom: lastRow, right: printedColumns },
    },
  };
}
