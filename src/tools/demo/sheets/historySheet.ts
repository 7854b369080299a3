import type { SheetModel } from '../../../sheets/model.ts';
import { sensitivityHistory, type KeptReading } from '../station/sensitivityHistory.ts';
import { listSheet } from './listSheet.ts';
import type { SheetColumn } from './sheetColumn.ts';

const columns: readonly SheetColumn<KeptReading>[] = [
  { header: 'Tag no.', width: 11, of: ({ tag }) => tag },
  { header: 'Date', width: 12, of: ({ date }) => date, centred: true },
  { header: 'As found / as left', width: 12, of: ({ reading }) => reading, centred: true },
  { header: 'Sensitivity', width: 11, of: ({ sensitivity }) => sensitivity },
  { header: 'Unit', width: 9, of: ({ unit }) => unit, centred: true },
];

/** The sensitivities of earlier calibrations that somebody kept. */
export function historySheet(): SheetModel {
  return listSheet(
    'Sensitivity history',
    'From the old calibration sheets, as far as they were found; the latest stand in the list',
    columns,
    sensitivityHistory,
  );
}
