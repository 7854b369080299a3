import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

const expanded = [
  ['inside', 191, 0.5],
  ['straddles below', 191, 2],
  ['outside', 186, 2],
  ['straddles still', 186, 3],
  ['outside above', 214, 1],
  ['no uncertainty', 191, null],
] as const;

export const golden: GoldenCase = {
  because:
    'ILAC-G8:09/2019 4.2, guarded with w = U, limits 0.95 and 1.05 of 200 mV/mil: 191 ± 0.5 % is 0.9502 to 0.9598, inside; ' +
    '191 ± 2 % is 0.936 to 0.974, across; 186 ± 2 % is 0.911 to 0.949, outside; 186 ± 3 % reaches 0.958, across; 214 ± 1 % ' +
    'is 1.059 to 1.081, outside on the early side (16000/214 = 74.8 mil of linear range is below 76); without U the value alone decides.',
  book: book(
    ['Channels', [['Tag', 'Measured sensitivity (mV/mil)', 'Uncertainty (%)'], ...expanded]],
    [
      'Monitor',
      [
        ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)'],
        ...expanded.map(([tag]) => [tag, 200, 3, 5]),
      ],
    ],
  ),
  channels: [
    { tag: 'outside', verdict: 'late', findings: ['alert-late @ Monitor!C4', 'danger-late @ Monitor!D4'] },
    {
      tag: 'straddles still',
      verdict: 'undetermined',
      findings: ['alert-undetermined @ Monitor!C5', 'danger-undetermined @ Monitor!D5'],
    },
    {
      tag: 'straddles below',
      verdict: 'undetermined',
      findings: ['alert-undetermined @ Monitor!C3', 'danger-undetermined @ Monitor!D3'],
    },
    {
      tag: 'outside above',
      verdict: 'early',
      findings: ['alert-early @ Monitor!C6', 'danger-early @ Monitor!D6', 'linear-range-short @ Channels!B6'],
    },
    { tag: 'inside', verdict: 'within', thresholds: { alert: {}, danger: { effective: 1000 / 191 } } },
    { tag: 'no uncertainty', verdict: 'within' },
  ],
  summary: { channels: 6, late: 1, undetermined: 2, early: 1, within: 2, unreachable: 0, incomplete: 0 },
};
