import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

const gaps = [10, 20, 30, 40, 50, 60, 70, 80, 90];

export const golden: GoldenCase = {
  because:
    'By hand: the record is straight at 0.18 V/mil, the gain 0.9: on the curve, as by its slope, danger acts at 5·200/(0.9·180) = 6.1728 mil; the list says 200 and so 5/0.9 = 5.5556. The later of two late lines governs: 5·180·0.9/200 = 4.05, 4.0 on the panel.',
  book: book(
    [
      'Channels',
      [
        ['Tag', 'Measured sensitivity (mV/mil)', 'Gap voltage (V)'],
        ['A', 200, -9],
      ],
    ],
    [
      'Monitor',
      [
        ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)', 'Monitor gain'],
        ['A', 200, 3, 5, 0.9],
      ],
    ],
    ['Record', [['Tag', 'Gap (mil)', 'Output (V)'], ...gaps.map((gap) => ['A', gap, -0.18 * gap])]],
  ),
  channels: [
    {
      tag: 'A',
      verdict: 'late',
      thresholds: {
        alert: { effective: 3 / 0.81, governedBy: 'calibration record' },
        danger: { effective: 5 / 0.81, governedBy: 'calibration record', panel: 4 },
      },
      findings: [
        'alert-late @ Monitor!C2',
        'danger-late @ Monitor!D2',
        'monitor-gain-off @ Monitor!E2',
        'alert-curve-differs @ Record!B2',
        'danger-curve-differs @ Record!B2',
        'record-disagrees-with-list @ Record!B2',
      ],
    },
  ],
};
