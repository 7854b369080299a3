import type { ModelRow, SheetModel } from '../../sheets/model.ts';
import { sensitivityHistory, type KeptReading } from '../station/sensitivityHistory.ts';
import { entryCells, headerCells, type SheetColumn } from './sheetColumn.ts';
import { handKept } from './writtenCell.ts';

const columns: readonly SheetColumn<KeptReading>[] = [
  { header: 'Tag no.', width: 11, of: ({ tag }) => tag },
  { header: 'Date', width: 12, of: ({ date }) => date, centred: true },
  { header: 'As found / as left', width: 12, of: ({ reading }) => reading, centred: true },
  { header: 'Sensitivity', width: 11, of: ({ sensitivity }) => sensitivity },
  { header: 'Unit', width: 9, of: ({ unit }) => unit, centred: true },
];

/** The sensitivities of earlier calibrations that somebody kept. */
export function historySheet(): SheetModel {
  const rows: readonly ModelRow[] = [
    { cells: [{ value: 'Sensitivity history', style: 'title' }] },
    {
      cells: [
        {
          value: 'From the old calibration sheets, as far as they were found; the latest stand in the list',
          style: 'subtitle',
        },
      ],
    },
    { cells: [] },
    { height: 30, cells: headerCells(columns) },
    ...sensitivityHistory.map((reading) => ({ cells: entryCells(columns, reading) })),
  ];
  return {
    name: 'Sensitivity history',
    widths: columns.map(({ width }) => width),
    styles: handKept,
    formulas: [],
    rowCount: rows.length,
    rows: () => rows,
    freeze: { rows: 4, columns: 0 },
    print: { landscape: false, repeatRows: { from: 4, to: 4 } },
  };
}
