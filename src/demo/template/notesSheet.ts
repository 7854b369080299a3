import type { TableKind } from '../../audit/read/tables/vocabulary.ts';
import { caution } from '../../audit/model/caution.ts';
import type { ModelRow, SheetModel } from '../../sheets/model.ts';
import { handKept } from '../sheets/writtenCell.ts';
import { budgetName } from './budget/budgetSheet.ts';
import { recordColumns } from './records/recordColumns.ts';
import { recordsName } from './records/recordsSheet.ts';
import { sheetNames, templateColumns } from './tableSheet.ts';

const howTo: readonly string[] = [
  'Fill in both tables, one row a channel; rows belong together by their tag. Order of columns and rows does not matter.',
  'Units stand in the headers. For a table in other units change what stands in the brackets, such as [mV/µm] and [µm].',
  'For a table of several units take the unit out of the header and write it into a column Unit beside it, row by row.',
  `Gaps and volts of a calibration may go into the sheet ${recordsName}: such a channel is also judged on its curve.`,
  `The sheet ${budgetName} works out the uncertainty of a measured sensitivity from its parts; any other way will do.`,
  'Write bare numbers. Nothing is guessed: what is missing or not understood is reported with its sheet, row and column.',
];

/** What each column is for, how to fill in the tables, and the caution that goes with every audit. */
export function templateNotes(): SheetModel {
  const all: readonly ModelRow[] = [
    title('How to use this workbook'),
    ...howTo.map(prose),
    { cells: [] },
    title('Caution'),
    ...caution.split(/(?<=\.) /u).map(prose),
    ...meanings('channels'),
    ...meanings('settings'),
    { cells: [] },
    title(`Columns of the sheet ${recordsName}`),
    ...recordColumns.map(({ header, meaning, needed }) => explained(header, meaning, needed)),
  ];
  return {
    name: 'Notes',
    widths: [34, 100],
    styles: { ...handKept, strong: { bold: true } },
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

function meanings(kind: TableKind): readonly ModelRow[] {
  return [
    { cells: [] },
    title(`Columns of the sheet ${sheetNames[kind]}`),
    ...templateColumns(kind).map(({ header, spec, help }) => explained(header, help.meaning, spec.required)),
  ];
}

function explained(header: string, meaning: string, needed = false): ModelRow {
  return { cells: [{ value: header, ...(needed ? { style: 'strong' } : {}) }, { value: meaning }] };
}
