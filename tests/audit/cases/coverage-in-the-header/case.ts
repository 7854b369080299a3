import { book } from '../../book.ts';
import type { GoldenCase } from '../../golden.ts';

export const golden: GoldenCase = {
  because:
    'A column says otherwise than k = 2 in its own header. By hand: u = 0.03 × 160/3 = 1.6 mV/mil; the limit of 6.2 mil lies at ' +
    '5 × 200/6.2 = 161.290 mV/mil, 0.80645 u above: Φ(0.80645) = 0.790009 (error function of the math library of Python).',
  book: book(
    [
      'Channels',
      [
        ['Tag', 'Measured sensitivity (mV/mil)', 'Uncertainty (%, k=3)', 'Limit (mil)'],
        ['U-1', 160, 3, 6.2],
      ],
    ],
    [
      'Monitor',
      [
        ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)'],
        ['U-1', 200, 3, 5],
      ],
    ],
  ),
  channels: [
    {
      tag: 'U-1',
      verdict: 'late',
      thresholds: { alert: {}, danger: { effective: 6.25, probabilityBeyondLimit: 0.790008751379829 } },
      findings: ['alert-late @ Monitor!C2', 'danger-late @ Monitor!D2', 'danger-beyond-limit @ Channels!D2'],
    },
  ],
};
