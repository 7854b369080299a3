import type { GoldenCase } from '../../golden.ts';
import cdf from '@stdlib/stats-base-dists-normal-cdf';
import { book } from '../../book.ts';

export const golden: GoldenCase = {
  because:
    'By hand: danger 5 mil acts at 6.25 mil, beyond a limit of 6 mil (152.4 µm), not of 6.25. Φ((5·200/6 − 160)/(0.03·160/2)) = Φ(6.667/2.4) = Φ(2.778), from a general-purpose library; the limit of 6.25 mil is met with Φ(0) = 0.5 and, as 3 % at k = 3 are 2 % at k = 2, may be passed up to 1000/(160·0.98) = 6.378 mil: under the guarded rule that needs action too. 4.7 mil of 5·200/215 = 4.651 mil ± 2 % may be passed by an early one, whose 16 V of linear span are 16/0.215 = 74 mil, short of 80.',
  book: book(
    [
      'Channels',
      [
        ['Tag', 'Measured sensitivity (mV/mil)', 'Uncertainty (%)', 'Limit (µm)', 'Coverage factor'],
        ['beyond', 160, 3, 152.4, null],
        ['at', 160, 3, 158.75, 3],
        ['early', 215, 2, 119.38, null],
      ],
    ],
    [
      'Monitor',
      [
        ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)'],
        ['beyond', 200, 3, 5],
        ['at', 200, 3, 5],
        ['early', 200, 3, 5],
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
        danger: { beyondLimit: 'yes', probabilityBeyondLimit: cdf((1000 / 6 - 160) / 2.4, 0, 1) },
      },
      findings: ['alert-late @ Monitor!C2', 'danger-late @ Monitor!D2', 'danger-beyond-limit @ Channels!D2'],
    },
    {
      tag: 'at',
      verdict: 'late',
      thresholds: {
        alert: { beyondLimit: null },
        danger: { high: 1000 / (160 * 0.98), beyondLimit: 'may', probabilityBeyondLimit: 0.5 },
      },
      findings: [
        'alert-late @ Monitor!C3',
        'danger-late @ Monitor!D3',
        'danger-may-be-beyond-limit @ Channels!D3',
      ],
    },
    {
      tag: 'early',
      verdict: 'early',
      thresholds: { alert: {}, danger: { effective: 1000 / 215, beyondLimit: 'may' } },
      findings: [
        'alert-early @ Monitor!C4',
        'danger-early @ Monitor!D4',
        'danger-may-be-beyond-limit @ Channels!D4',
        'linear-range-short @ Channels!B4',
      ],
    },
  ],
};
