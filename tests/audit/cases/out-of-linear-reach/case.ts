import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

export const golden: GoldenCase = {
  because:
    'By hand, linear from −2 to −18 V (common practice, no source): at −3 V and 200 mV/mil the swing is at most 2·1 V/0.2 = 10 mil, ' +
    'at −17 V the same; danger 12 mil lies beyond, alert 9 mil inside. In 0-to-peak 10 mil p-p is 5 mil, and 6 mil lies beyond. ' +
    'A gap outside the span leaves no reach at all.',
  book: book(
    [
      'Channels',
      [
        ['Tag', 'Measured sensitivity (mV/mil)', 'Gap voltage (V)'],
        ['near', 200, -3],
        ['far', 200, -17],
        ['mid', 200, -10],
        ['peak', 200, -3],
        ['outside', 200, -18.5],
      ],
    ],
    [
      'Monitor',
      [
        ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)', 'Detection'],
        ['near', 200, 9, 12, null],
        ['far', 200, 9, 12, null],
        ['mid', 200, 9, 12, null],
        ['peak', 200, 4, 6, '0-p'],
        ['outside', 200, 9, 12, null],
      ],
    ],
  ),
  channels: [
    {
      tag: 'near',
      verdict: 'unreachable',
      inputs: { linearReach: 10 },
      thresholds: {
        alert: { verdict: 'within' },
        danger: { unreachable: ['out of the linear reach'], effective: 12 },
      },
      findings: ['danger-out-of-linear-reach @ Monitor!D2'],
    },
    { tag: 'far', verdict: 'unreachable', findings: ['danger-out-of-linear-reach @ Monitor!D3'] },
    {
      tag: 'peak',
      verdict: 'unreachable',
      is: { detection: '0-p' },
      inputs: { linearReach: 5 },
      findings: ['danger-out-of-linear-reach @ Monitor!D5'],
    },
    {
      tag: 'outside',
      verdict: 'unreachable',
      inputs: { linearReach: 0 },
      findings: ['alert-out-of-linear-reach @ Monitor!C6', 'danger-out-of-linear-reach @ Monitor!D6'],
    },
    { tag: 'mid', verdict: 'within', inputs: { linearReach: 80 } },
  ],
};
