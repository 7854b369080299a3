import type { ColumnSpec, TableKind } from '../../audit/read/tables/vocabulary.ts';
import { columnsOf } from '../../audit/read/tables/vocabulary.ts';
import type { SheetModel } from '../../sheets/model.ts';
import type { Validation } from '../parts/validation.ts';
import { handKept } from '../sheets/writtenCell.ts';
import { channelHelp } from './channelHelp.ts';
import { settingsHelp } from './settingsHelp.ts';
import { entryRules } from './entryRules.ts';
import { headerText, type ColumnHelp } from './templateColumn.ts';

/** One column of a template's table. */
export interface TemplateColumn {
  readonly spec: ColumnSpec;
  readonly help: ColumnHelp;
  readonly header: string;
}

/** All columns of a kind of table in the order of the vocabulary. */
export function templateColumns(kind: TableKind): readonly TemplateColumn[] {
  const helps: Readonly<Record<string, ColumnHelp>> = kind === 'channels' ? channelHelp : settingsHelp;
  return Object.entries(columnsOf(kind)).flatMap(([id, spec]) => {
    const help = helps[id];
    return help ? [{ spec, help, header: headerText(spec, help) }] : [];
  });
}

export const sheetNames: Readonly<Record<TableKind, string>> = {
  channels: 'Channel list',
  settings: 'Monitor settings',
};
const headerRow = 3;
/** Rows that are prepared for entries; more may follow. */
const preparedRows = 1000;

/** An empty table: title, one line of advice, and the headers. */
export function tableSheet(kind: TableKind): SheetModel {
  const columns = templateColumns(kind);
  const dates = columns.map(({ spec }) => spec.holds === 'date');
  const headers = columns.map(({ header }) => ({ value: header, style: 'header' }));
  return {
    name: sheetNames[kind],
    widths: columns.map(({ header, spec }) =>
      spec.holds === 'text' ? 18 : Math.max(13, header.length / 2 + 3),
    ),
    styles: handKept,
    formulas: [],
    rowCount: headerRow + preparedRows,
    *rows() {
      yield { cells: [{ value: sheetNames[kind], style: 'title' }] };
      yield { cells: [{ value: advice, style: 'subtitle' }] };
      yield { height: 48, cells: headers };
      const blank = { cells: dates.map((date) => (date ? { value: null, style: 'date' } : undefined)) };
      for (let row = 0; row < preparedRows; row++) yield blank;
    },
    freeze: { rows: headerRow, columns: 1 },
    print: { landscape: true, repeatRows: { from: headerRow, to: headerRow } },
  };
}

const advice =
  'One row a channel from row 4 on. Columns that are not needed may stay empty or be deleted; see the sheet Notes.';

/** The rules for what may be typed into a table's rows. */
export function tableValidations(kind: TableKind): readonly Validation[] {
  const columns = templateColumns(kind).map(({ header, help }) => ({ ...help, header }));
  return entryRules(columns, headerRow + 1, headerRow + preparedRows);
}
