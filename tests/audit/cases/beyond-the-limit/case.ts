import type { GoldenCase } from '../../golden.ts';
import cdf from '@stdlib/stats-base-dists-normal-cdf';
import { book } from '../../book.ts';

export const golden: GoldenCase = {
  because:
    'By hand: danger 5 mil acts at 6.25 mil, beyond a limit of 6 mil (152.4 µm), not of 6.25. Φ((5·200/6 − 160)/(0.03·160/2)) = Φ(6.667/2.4) = Φ(2.778), from a general-purpose library; the limit itself is met with Φ(0) = 0.5.',
  book: book(
    [
      'Channels',
      [
        ['Tag', 'Measured sensitivity (mV/mil)', 'Uncertainty (%)', 'Limit (µm)', 'Coverage factor'],
        ['beyond', 160, 3, 152.4, null],
        ['at', 160, 3, 158.75, 3],
      ],
    ],
    [
      'Monitor',
      [
        ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)'],
        ['beyond', 200, 3, 5],
        ['at', 200, 3, 5],
      ],
    ],
  ),
  channels: [
    {
      tag: 'beyond',
      verdict: 'late',
      inputs: { limit: 6 },
      thresholds: {
        alert: { probabilityBeyondLimit: null },
        danger: { probabilityBeyondLimit: cdf((1000 / 6 - 160) / 2.4, 0, 1) },
      },
      findings: ['alert-late @ Monitor!C2', 'danger-late @ Monitor!D2', 'danger-beyond-limit @ Channels!D2'],
    },
    {
      tag: 'at',
      verdict: 'late',
      thresholds: { alert: {}, danger: { probabilityBeyondLimit: 0.5 } },
      findings: ['alert-late @ Monitor!C3', 'danger-late @ Monitor!D3'],
    },
  ],
};
