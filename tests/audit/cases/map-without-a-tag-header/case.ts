import { book } from '../../book.ts';
import type { GoldenCase } from '../../golden.ts';

export const golden: GoldenCase = {
  because:
    'A column map by header names the tag column too, on any sheet, and letters never fall on the other table: 160 is read, ' +
    'not the rack slot 7 in the same column of the settings. By hand: 5 mil × 200/160 = 6.25 mil.',
  book: book(
    [
      'Channels',
      [
        ['Instrument name', 'Measured', 'MS2'],
        ['A-1', 1, 160],
      ],
    ],
    [
      'Monitor',
      [
        ['Tag', 'Configured sensitivity (mV/mil)', 'Rack slot', 'Alert (mil)', 'Danger (mil)'],
        ['A-1', 200, 7, 3, 5],
      ],
    ],
  ),
  map: {
    channels: {
      columns: { tag: 'Instrument name', 'measured sensitivity': 'C' },
      units: { 'measured sensitivity': 'mV/mil' },
    },
  },
  channels: [
    {
      tag: 'A-1',
      verdict: 'late',
      thresholds: { alert: {}, danger: { effective: 6.25 } },
      findings: ['alert-late @ Monitor!D2', 'danger-late @ Monitor!E2'],
    },
  ],
};
