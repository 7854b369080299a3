import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

export const golden: GoldenCase = {
  because:
    'ILAC-G8:09/2019 4.2, simple acceptance: the value alone decides whatever its uncertainty. 191/200 = 0.955 is within 5 %, ' +
    '189/200 = 0.945 is not; 190/200 = 0.95 is on the limit, which belongs to the band. The panel shows 5 × 0.945 = 4.725 there, nothing counted against it, in two digits 4.7; 5/0.955 = 5.236 lies before a limit of 5.3, whatever 4 % would add.',
  book: book([
    'All',
    [
      [
        'Tag',
        'Measured sensitivity (mV/mil)',
        'Uncertainty (%)',
        'Configured sensitivity (mV/mil)',
        'Alert (mil)',
        'Danger (mil)',
        'Limit (mil)',
      ],
      ['in', 191, 4, 200, 3, 5, 5.3],
      ['on', 190, 4, 200, 3, 5],
      ['out', 189, 4, 200, 3, 5],
      ['plain', 200, null, 200, 3, 5],
    ],
  ]),
  policy: { rule: 'simple' },
  channels: [
    {
      tag: 'out',
      verdict: 'late',
      thresholds: { alert: { panel: 2.8 }, danger: { panel: 4.7, interimSetpoint: 4.7 } },
      findings: ['alert-late @ All!E4', 'danger-late @ All!F4'],
    },
    { tag: 'on', verdict: 'within' },
    {
      tag: 'in',
      verdict: 'within',
      thresholds: { alert: {}, danger: { effective: 1000 / 191, beyondLimit: 'no' } },
    },
    {
      tag: 'plain',
      verdict: 'within',
      thresholds: { alert: {}, danger: { notJudged: ['reach', 'limit', 'full scale'] } },
    },
  ],
};
