import type { ColumnEntry, System, TableKind } from '../../audit/read/tables/columnSpec.ts';
import { caution } from '../../audit/model/caution.ts';
import type { ModelRow, SheetModel } from '../../sheets/model.ts';
import { handKeptStyles } from '../demo/sheets/writtenCell.ts';
import { budgetName } from './budget/budgetSheet.ts';
import { recordColumns } from './records/recordColumns.ts';
import { recordsName } from './records/recordsSheet.ts';
import { sampleIn } from './templateColumn.ts';
import { sheetNames, templateColumns } from './tableSheet.ts';

const howTo: readonly string[] = [
  'Fill in both tables, one row a channel; rows belong together by their tag. Order of columns and rows does not matter.',
  'Units stand in the headers. For a table in other units change what stands in the brackets, such as [mV/mm] and [mm].',
  'For a table of several units take the unit out of the header and write it into a column Unit beside it, row by row.',
  `Gaps and volts of a calibration may go into the sheet ${recordsName}: such a channel is also judged on its curve.`,
  `The sheet ${budgetName} works out the uncertainty of a measured sensitivity from its parts; any other way will do.`,
  'Write bare numbers. Nothing is guessed: what is missing or not understood is reported with its sheet, row and column.',
];

/** What each column is for, how to fill in the tables, and the caution that goes with every audit. */
export function templateNotes(system: System): SheetModel {
  const all: readonly ModelRow[] = [
    title('How to use this workbook'),
    ...howTo.map(prose),
    { cells: [] },
    title('Caution'),
    ...caution.split(/(?<=\.) /u).map(prose),
    ...meanings('channels', system),
    ...meanings('settings', system),
    { cells: [] },
    title(`Columns of the sheet ${recordsName}`),
    ...recordColumns(system).map((column) => explained(column.header, column, column.needed, system)),
  ];
  return {
    name: 'Notes',
    widths: [34, 100],
    styles: { ...handKeptStyles, strong: { bold: true } },
    formulas: [],
    rowCount: all.length,
    rows: () => all,
    print: { landscape: true },
  };
}

function title(value: string): ModelRow {
  return { cells: [{ value, style: 'title' }] };
}

function prose(value: string): ModelRow {
  return { cells: [{ value }] };
}

function meanings(kind: TableKind, system: System): readonly ModelRow[] {
  return [
    { cells: [] },
    title(`Columns of the sheet ${sheetNames[kind]}`),
    ...templateColumns(kind, system).map(({ header, spec, needed }) =>
      explained(header, spec.entry, needed, system),
    ),
  ];
}

function explained(header: string, entry: ColumnEntry, needed = false, system: System): ModelRow {
  const text = `${entry.meaning} Example: ${sampleIn(entry, system)}`;
  return { cells: [{ value: header, ...(needed ? { style: 'strong' } : {}) }, { value: text }] };
}
