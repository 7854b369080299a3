import { book } from '../../book.ts';
import type { GoldenCase } from '../../golden.ts';

export const golden: GoldenCase = {
  because:
    'Counter setpoints are of axial channels (the table of columns): on a radial one they are noted and give no thresholds, and ' +
    'the channel is audited as it is: 5 × 200/200 = 5 mil.',
  book: book(
    [
      'Channels',
      [
        ['Tag', 'Measured sensitivity (mV/mil)'],
        ['V-1', 200],
      ],
    ],
    [
      'Monitor',
      [
        ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)', 'Counter danger (mil)'],
        ['V-1', 200, 3, 5, 20],
      ],
    ],
  ),
  channels: [
    {
      tag: 'V-1',
      verdict: 'within',
      thresholds: { alert: { effective: 3 }, danger: { effective: 5 } },
      findings: ['counter-setpoint-not-axial @ Monitor!E2'],
    },
  ],
};
