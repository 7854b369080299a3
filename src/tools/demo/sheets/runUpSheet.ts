import type { SheetModel } from '../../../sheets/model.ts';
import { lastRunUp, type RunUpReading } from '../station/lastRunUp.ts';
import { listSheet } from './listSheet.ts';
import type { SheetColumn } from './sheetColumn.ts';

const columns: readonly SheetColumn<RunUpReading>[] = [
  { header: 'Tag no.', width: 11, of: ({ tag }) => tag },
  { header: 'Speed (r/min)', width: 11, of: ({ speed }) => speed },
  { header: 'Indicated amplitude (mil p-p)', width: 18, of: ({ shown }) => shown },
];

/** The amplitudes of the last run-up, as somebody read them off the monitor’s plot. */
export function runUpSheet(): SheetModel {
  return listSheet(
    'Run-up K-101',
    'Run-up after the outage, bearing 2, as the monitor showed it',
    columns,
    lastRunUp,
  );
}
