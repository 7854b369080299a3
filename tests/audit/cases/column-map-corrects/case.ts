import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

export const golden: GoldenCase = {
  because:
    'The user says what the headers do not: the danger stands in the column High high, the measured sensitivity in column C and in mV/µm, and the full scale is to be left out. By hand: 160 mV/mil is 160/25.4 mV/µm.',
  book: book(
    [
      'Channels',
      [
        ['Tag', 'Measured sensitivity (mV/mil)', 'New reading'],
        ['A', 200, 160 / 25.4],
      ],
    ],
    [
      'Monitor',
      [
        ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'High-high (mil)', 'Full scale (mil)'],
        ['A', 200, 3, 5, 4],
      ],
    ],
  ),
  map: {
    channels: {
      sheet: 'channels',
      columns: { 'Measured Sensitivity': 'C' },
      units: { 'measured sensitivity': 'mV/µm' },
    },
    settings: { sheet: 'Monitor', columns: { danger: 'High high (mil)', 'full scale': null } },
  },
  channels: [
    {
      tag: 'A',
      verdict: 'late',
      sensitivity: { measured: 160 },
      inputs: { fullScale: null },
      thresholds: { alert: { effective: 3.75 }, danger: { setpoint: 5, effective: 6.25 } },
      findings: ['alert-late @ Monitor!C2', 'danger-late @ Monitor!D2'],
    },
  ],
};
