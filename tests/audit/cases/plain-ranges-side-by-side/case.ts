import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

export const golden: GoldenCase = {
  because: 'Two ranges beside each other with a blank column between are two tables.',
  book: book([
    'Both',
    [
      [
        'Tag',
        'Measured sensitivity (mV/mil)',
        null,
        'TAG',
        'Configured sensitivity (mV/mil)',
        'Alert (mil)',
        'Danger (mil)',
      ],
      ['A', 160, null, 'B', 200, 3, 5],
      ['B', 200, null, 'A', 200, 3, 5],
    ],
  ]),
  channels: [
    { tag: 'A', verdict: 'late', findings: ['alert-late @ Both!F3', 'danger-late @ Both!G3'] },
    { tag: 'B', verdict: 'within' },
  ],
};
