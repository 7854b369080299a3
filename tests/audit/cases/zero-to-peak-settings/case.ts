import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

export const golden: GoldenCase = {
  because:
    'p-p = 2 × 0-p for a sinusoid; a result is in the detection of its setpoint. By hand: danger 5 mil 0-p on a full scale of 8 mil p-p (4 mil 0-p) can not act; a limit of 12.8 mil p-p is 6.4 mil 0-p. ' +
    '2.5 mil 0-p is 127 µm p-p: zone B at 3600 r/min (ISO 20816-3, from memory), and 3.125 mil 0-p 158.75 µm: C.',
  book: book(
    [
      'Channels',
      [
        ['Tag', 'Measured sensitivity (mV/mil)', 'Limit (mil p-p)', 'Speed (r/min)'],
        ['scale', 200, 12.8, null],
        ['zone', 160, null, 3600],
      ],
    ],
    [
      'Monitor',
      [
        [
          'Tag',
          'Configured sensitivity (mV/mil)',
          'Alert (mil 0-p)',
          'Danger [mil pk]',
          'Full scale (mil p-p)',
        ],
        ['scale', 200, 3, 5, 8],
        ['zone', 200, 1.5, 2.5, 8],
      ],
    ],
  ),
  channels: [
    {
      tag: 'scale',
      verdict: 'unreachable',
      is: { detection: '0-p' },
      inputs: { fullScale: 4, limit: 6.4 },
      findings: ['danger-above-full-scale @ Monitor!D2'],
    },
    {
      tag: 'zone',
      verdict: 'late',
      thresholds: {
        alert: { intendedZone: 'A', zone: 'B' },
        danger: { effective: 3.125, intendedZone: 'B', zone: 'C' },
      },
      findings: [
        'alert-late @ Monitor!C3',
        'alert-in-worse-zone @ Monitor!C3',
        'danger-late @ Monitor!D3',
        'danger-in-worse-zone @ Monitor!D3',
      ],
    },
  ],
};
