import type { TableColumn, System, TableKind } from '../../audit/read/tables/columnSpec.ts';
import { columnsOf } from '../../audit/read/tables/vocabulary.ts';
import type { SheetModel } from '../../sheets/model.ts';
import type { Validation } from '../demo/parts/validation.ts';
import { entryRules } from './entryRules.ts';
import { headerCell, templateStyles } from './headerCells.ts';
import { headerText } from './templateColumn.ts';

/** One column of a template's table. */
export interface TemplateColumn {
  readonly spec: TableColumn;
  readonly header: string;
  /** No channel is judged without it. */
  readonly needed: boolean;
}

/** All columns of a kind of table in the order of the vocabulary. */
export function templateColumns(kind: TableKind, system: System): readonly TemplateColumn[] {
  return Object.values(columnsOf(kind)).map((spec) => ({
    spec,
    header: headerText(spec, system),
    needed: spec.required === true,
  }));
}

export const sheetNames: Readonly<Record<TableKind, string>> = {
  channels: 'Channel list',
  settings: 'Monitor settings',
};
const headerRow = 3;
/** Rows that are prepared for entries; more may follow. */
const preparedRows = 1000;

/** An empty table: title, one line of advice, and the headers. */
export function tableSheet(kind: TableKind, system: System): SheetModel {
  const columns = templateColumns(kind, system);
  const dates = columns.map(({ spec }) => spec.holds === 'date');
  return {
    name: sheetNames[kind],
    widths: columns.map(({ header, spec }) =>
      spec.holds === 'text' ? 18 : Math.max(13, header.length / 2 + 3),
    ),
    styles: templateStyles,
    formulas: [],
    rowCount: headerRow + preparedRows,
    *rows() {
      yield { cells: [{ value: sheetNames[kind], style: 'title' }] };
      yield { cells: [{ value: advice, style: 'subtitle' }] };
      yield { height: 48, cells: columns.map(headerCell) };
      const blank = { cells: dates.map((date) => (date ? { value: null, style: 'date' } : undefined)) };
      for (let row = 0; row < preparedRows; row++) yield blank;
    },
    freeze: { rows: headerRow, columns: 1 },
    print: { landscape: true, repeatRows: { from: headerRow, to: headerRow } },
  };
}

const advice =
  'One row a channel from row 4 on. Dark headers are needed; the other columns may stay empty or be deleted. Select a cell to see what goes there.';

/** The rules for what may be typed into a table's rows. */
export function tableValidations(kind: TableKind, system: System): readonly Validation[] {
  const columns = templateColumns(kind, system).map(({ header, spec, needed }) => ({
    ...spec.entry,
    header,
    needed,
  }));
  return entryRules(columns, headerRow + 1, headerRow + preparedRows, system);
}
