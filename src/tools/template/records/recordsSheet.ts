import type { SheetModel } from '../../../sheets/model.ts';
import type { Validation } from '../../demo/parts/validation.ts';
import { entryRules } from '../entryRules.ts';
import { headerCell, templateStyles } from '../headerCells.ts';
import type { System } from '../../../audit/read/tables/columnSpec.ts';
import { recordColumns } from './recordColumns.ts';

export const recordsName = 'Probe records';
const headerRow = 4;
/** Rows that are prepared for entries; more may follow. */
const preparedRows = 1000;

const advice: readonly string[] = [
  'One row a point from row 5 on, three points a probe or more; all rows of a probe carry its tag.',
  'Dark headers are needed. May stay empty: a probe with a record is also judged on its curve. See the sheet Notes.',
];

/** An empty table of gaps and volts: title, advice, headers. */
export function recordsSheet(system: System): SheetModel {
  const columns = recordColumns(system);
  const dates = columns.map(({ holds }) => holds === 'date');
  return {
    name: recordsName,
    widths: columns.map(({ header }) => Math.max(14, header.length + 2)),
    styles: templateStyles,
    formulas: [],
    rowCount: headerRow + preparedRows,
    *rows() {
      yield { cells: [{ value: recordsName, style: 'title' }] };
      for (const line of advice) yield { cells: [{ value: line, style: 'subtitle' }] };
      yield { height: 30, cells: columns.map(headerCell) };
      const blank = { cells: dates.map((date) => (date ? { value: null, style: 'date' } : undefined)) };
      for (let row = 0; row < preparedRows; row++) yield blank;
    },
    freeze: { rows: headerRow, columns: 1 },
    print: { landscape: false, repeatRows: { from: headerRow, to: headerRow } },
  };
}

/** The rules for what may be typed into its rows. */
export function recordValidations(system: System): readonly Validation[] {
  return entryRules(recordColumns(system), headerRow + 1, headerRow + preparedRows, system);
}
