import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

export const golden: GoldenCase = {
  because:
    'T = m·S·Kc/(g·Km) by hand: S 5 at 200/(0.97·196) is 5.2598, with √(3² + 1²) = 3.1623 % from 5.0986 to 5.4316; B, whose gain is off by more than 5 %, 5·200/(0.94·196) = 5.4277, from 5.2613 to 5.6049. The panel reading 5·196·0.94·(1 − 0.031623)/200 = 4.4603, down to two digits. A present reading of 3 is really 3.2566. C gives the gain in percent, which is none.',
  book: book(
    [
      'Channels',
      [
        ['Tag', 'Measured sensitivity (mV/mil)', 'Uncertainty (%)', 'Present reading (mil)'],
        ['A', 196, 3, null],
        ['B', 196, 3, 3],
        ['C', 196, 3, null],
      ],
    ],
    [
      'Monitor',
      [
        [
          'Tag',
          'Configured sensitivity (mV/mil)',
          'Alert (mil)',
          'Danger (mil)',
          'Monitor gain',
          'Monitor gain uncertainty (%)',
        ],
        ['A', 200, 3, 5, 0.97, 1],
        ['B', 200, 3, 5, 0.94, 1],
        ['C', 200, 3, 5, 97, null],
      ],
    ],
  ),
  channels: [
    {
      tag: 'B',
      verdict: 'undetermined',
      inputs: { realReading: 3.2566217976552325 },
      thresholds: {
        alert: { effective: 3.2566217976552325, low: 3.156795169241048, high: 3.362968189428086 },
        danger: {
          effective: 5.427702996092054,
          low: 5.261325282068413,
          high: 5.604946982380143,
          verdict: 'undetermined',
          panel: 4.4,
        },
      },
      findings: [
        'alert-undetermined @ Monitor!C3',
        'danger-undetermined @ Monitor!D3',
        'monitor-gain-off @ Monitor!E3',
      ],
    },
    {
      tag: 'A',
      verdict: 'undetermined',
      thresholds: {
        alert: { verdict: 'undetermined' },
        danger: {
          effective: 5.259835893120134,
          low: 5.098603881592069,
          high: 5.431598106636426,
          verdict: 'undetermined',
        },
      },
      findings: ['alert-undetermined @ Monitor!C2', 'danger-undetermined @ Monitor!D2'],
    },
    {
      tag: 'C',
      verdict: 'incomplete',
      findings: ['value-out-of-range @ Monitor!E4'],
    },
  ],
  says: [/shows 6 % too little of what is injected \(gain 0\.94\)/u],
};
