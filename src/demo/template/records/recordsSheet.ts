import type { SheetModel } from '../../../sheets/model.ts';
import type { Validation } from '../../parts/validation.ts';
import { handKept } from '../../sheets/writtenCell.ts';
import { entryRules } from '../entryRules.ts';
import { recordColumns } from './recordColumns.ts';

export const recordsName = 'Probe records';
const headerRow = 4;
/** Rows that are prepared for entries; more may follow. */
const preparedRows = 1000;

const advice: readonly string[] = [
  'One row a point from row 5 on, three points a probe or more; all rows of a probe carry its tag.',
  'May stay empty: a probe with a record is also judged on its curve. See the sheet Notes.',
];

/** An empty table of gaps and volts: title, advice, headers. */
export function recordsSheet(): SheetModel {
  const dates = recordColumns.map(({ holds }) => holds === 'date');
  return {
    name: recordsName,
    widths: recordColumns.map(({ header }) => Math.max(14, header.length + 2)),
    styles: handKept,
    formulas: [],
    rowCount: headerRow + preparedRows,
    *rows() {
      yield { cells: [{ value: recordsName, style: 'title' }] };
      for (const line of advice) yield { cells: [{ value: line, style: 'subtitle' }] };
      yield { height: 30, cells: recordColumns.map(({ header }) => ({ value: header, style: 'header' })) };
      const blank = { cells: dates.map((date) => (date ? { value: null, style: 'date' } : undefined)) };
      for (let row = 0; row < preparedRows; row++) yield blank;
    },
    freeze: { rows: headerRow, columns: 1 },
    print: { landscape: false, repeatRows: { from: headerRow, to: headerRow } },
  };
}

/** The rules for what may be typed into its rows. */
export function recordValidations(): readonly Validation[] {
  return entryRules(recordColumns, headerRow + 1, headerRow + preparedRows);
}
