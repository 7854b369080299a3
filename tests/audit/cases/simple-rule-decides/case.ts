import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

export const golden: GoldenCase = {
  because:
    'ILAC-G8:09/2019 4.2, simple acceptance: the value alone decides whatever its uncertainty. 191/200 = 0.955 is within 5 %, ' +
    '189/200 = 0.945 is not; 190/200 = 0.95 is on the limit, which belongs to the band.',
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
      ],
      ['in', 191, 4, 200, 3, 5],
      ['on', 190, 4, 200, 3, 5],
      ['out', 189, 4, 200, 3, 5],
    ],
  ]),
  policy: { rule: 'simple' },
  channels: [
    { tag: 'out', verdict: 'late', findings: ['alert-late @ All!E4', 'danger-late @ All!F4'] },
    { tag: 'on', verdict: 'within' },
    { tag: 'in', verdict: 'within' },
  ],
};
