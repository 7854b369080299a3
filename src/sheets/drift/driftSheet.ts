import type { Report } from '../../audit/model/report.ts';
import { TWO_SIGMA } from '../../method/uncertainty.ts';
import { cell } from '../cells.ts';
import { formulaList } from '../formulaList.ts';
import { tones } from '../style/palette.ts';
import { footerOf } from '../style/print.ts';
import { frameStyles, levelStyles } from '../style/styles.ts';
import type { ModelCell, ModelRow, SheetModel } from '../model.ts';
import { sheetNames, tableNames, titleOf } from '../titles.ts';
import { driftList, type Drifting, levelPlace, readingList, tolerancePlace } from './driftColumns.ts';

/** Row of the headers of the upper table. */
const headerRow = 6;
const input = { named: 'Tripdrift input', fill: tones.input, underline: true } as const;

/** The channels of a report whose drift was worked out, in its order. */
export function driftingChannels({ channels }: Report): Drifting[] {
  return channels.flatMap(({ tag, machine, location, sensitivity: { configured }, drift }) =>
    drift && configured !== null ? [{ tag, machine, location, configured, drift }] : [],
  );
}

/** One line a channel whose drift was worked out, with native formulas over its readings, which stand below. */
export function driftSheet(report: Report, drifting: readonly Drifting[]): SheetModel {
  const { caution, policy } = report;
  const formulas = formulaList();
  const firstReading = headerRow + drifting.length + 4;
  let next = firstReading;
  const lines = drifting.map((of): ModelRow => {
    const { readings } = of.drift;
    const first = next + readings.filter(({ counts }) => !counts).length;
    next += readings.length;
    return driftList.row({ ...of, first, last: next - 1 }, formulas.place);
  });
  return {
    name: sheetNames.drift,
    widths: driftList.widths,
    styles: {
      ...frameStyles,
      ...levelStyles,
      correlation: { numberFormat: '0.000_0', valign: 'top' },
      input: { ...input, numberFormat: '0.00%' },
    },
    formulas: formulas.all,
    rowCount: next - 1,
    *rows() {
      yield { height: 24, cells: [cell(titleOf('drift', report), 'title')] };
      yield { height: 30, cells: [cell(caution, 'caution')] };
      yield { height: 30, cells: [cell(reading, 'wrapped')] };
      yield { cells: constants('header', 'Tolerance', 'Level') };
      yield { cells: constants('input', policy.tolerance, TWO_SIGMA) };
      yield { height: 45, cells: driftList.headers };
      yield* lines;
      yield { cells: [] };
      yield { height: 20, cells: [cell('Readings', 'strong')] };
      yield { height: 30, cells: readingList.headers };
      for (const of of drifting)
        for (const reading of of.drift.readings) yield readingList.row({ of, reading });
    },
    freeze: { rows: headerRow, columns: 1 },
    table: {
      name: tableNames.drift,
      area: { top: headerRow, left: 1, bottom: headerRow + drifting.length, right: driftList.columns.length },
    },
    merges: [2, 3].map((row) => ({ top: row, left: 1, bottom: row, right: driftList.columns.length })),
    print: { landscape: true, footer: footerOf(report) },
  };
}

const reading =
  'Least-squares line of the sensitivity against time, all readings as equal; a year has 365.25 days. “Earliest” and “latest” are where the confidence band of the line meets the edge of the tolerance. Dates are as audited; the other figures follow the readings, the tolerance and the level. Readings from before a correction do not count. It is a forecast by a straight line, no promise.';

/** Two cells above the table that its formulas go by. */
function constants(
  style: string,
  tolerance: string | number,
  level: string | number,
): (ModelCell | undefined)[] {
  const cells: (ModelCell | undefined)[] = [];
  cells[tolerancePlace.column - 1] = cell(tolerance, style);
  cells[levelPlace.column - 1] = cell(level, style);
  return Array.from(cells);
}
