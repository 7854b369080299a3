import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

export const golden: GoldenCase = {
  because:
    'Where the header says mil and the row says µm, or two unit cells of a row differ, it can not be told which holds: nothing is guessed.',
  book: book([
    'All',
    [
      [
        'Tag',
        'Measured sensitivity (mV/mil)',
        'Configured sensitivity (mV/mil)',
        'Alert (mil)',
        'Danger (mil)',
        'Danger unit',
      ],
      ['differs', 200, 200, 3, 5, 'µm'],
      ['agrees', 200, 200, 3, 5, 'thou'],
    ],
  ]),
  channels: [
    { tag: 'differs', verdict: 'incomplete', findings: ['unit-not-clear @ All!E2'] },
    { tag: 'agrees', verdict: 'within' },
  ],
};
