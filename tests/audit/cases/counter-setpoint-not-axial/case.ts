import { book } from '../../book.ts';
import type { GoldenCase } from '../../golden.ts';

export const golden: GoldenCase = {
  because:
    'Counter setpoints are of axial channels (the table of columns): on a radial one they are noted and give no thresholds, and ' +
    'the channel is audited as it is: 5 × 200/200 = 5 mil. A row without a kind that has one may be of a position: its kind is asked, not assumed.',
  book: book(
    [
      'Channels',
      [
        ['Tag', 'Kind', 'Measured sensitivity (mV/mil)'],
        ['V-1', 'radial', 200],
        ['V-2', null, 200],
      ],
    ],
    [
      'Monitor',
      [
        ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)', 'Counter danger (mil)'],
        ['V-1', 200, 3, 5, 20],
        ['V-2', 200, 3, 5, 20],
      ],
    ],
  ),
  channels: [
    { tag: 'V-2', verdict: 'incomplete', is: { kind: null }, findings: ['kind-missing @ Channels!B3'] },
    {
      tag: 'V-1',
      verdict: 'within',
      thresholds: { alert: { effective: 3 }, danger: { effective: 5 } },
      findings: ['counter-setpoint-not-axial @ Monitor!E2'],
    },
  ],
};
