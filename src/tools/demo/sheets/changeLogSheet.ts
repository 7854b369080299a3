import type { SheetModel } from '../../../sheets/model.ts';
import { dayNumber, handKeptStyles } from './writtenCell.ts';

export const changeLogColumns = ['Date', 'Machine', 'What was done'] as const;

const entries: readonly (readonly [date: string, machine: string, what: string])[] = [
  ['2023-06-14', 'G-101', 'Thrust probe renewed; zero taken with the rotor pushed to one side'],
  ['2024-02-16', 'P-301', 'Seal at the non-drive end changed; left probe taken out and put back'],
  ['2024-09-16', 'K-101', 'Outage: extension cables of bearing 1 renewed from stores'],
  ['2024-09-18', 'K-101', 'Gap of probe 2Y set back to −9.9 V'],
  ['2025-01-21', 'P-303', 'Shaft sleeve renewed; other alloy, the usual one was not to be had'],
  ['2025-04-08', 'T-101', 'Start-up multiplier of 2X set to 3 after a trip in a cold start'],
  ['2025-07-02', 'F-401', 'Motor replaced; third sensor not put back'],
  ['2025-11-05', 'G-101', 'Run-in after the rebuild: danger of HX at 6 mil'],
];

/** Area of the change log's table, header included. */
export const changeLogArea = { top: 3, left: 1, bottom: 3 + entries.length, right: changeLogColumns.length };

/** What was done at the station, as a table of its own that no audit needs. */
export function changeLogSheet(): SheetModel {
  return {
    name: 'Change log',
    widths: [12, 12, 80],
    styles: handKeptStyles,
    formulas: [],
    rowCount: changeLogArea.bottom,
    *rows() {
      yield { cells: [{ value: 'Changes at the machines', style: 'title' }] };
      yield { cells: [] };
      yield { cells: changeLogColumns.map((value) => ({ value, style: 'header' })) };
      for (const [date, machine, what] of entries) {
        yield { cells: [{ value: dayNumber(date), style: 'date' }, { value: machine }, { value: what }] };
      }
    },
    print: { landscape: false },
  };
}
