import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

const header = ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)'];

export const golden: GoldenCase = {
  because:
    'A header repeated on each printed page is no channel, and the rows below it belong to the same table.',
  book: book(
    [
      'Channels',
      [
        ['Tag', 'Measured sensitivity (mV/mil)'],
        ['A', 200],
        ['B', 160],
      ],
    ],
    ['Monitor', [['Page 1'], header, ['A', 200, 3, 5], [], ['Page 2'], header, ['B', 200, 3, 5]]],
  ),
  channels: [
    { tag: 'B', verdict: 'late', findings: ['alert-late @ Monitor!C7', 'danger-late @ Monitor!D7'] },
    { tag: 'A', verdict: 'within' },
  ],
  problems: ['header-repeated @ Monitor!A6', 'heading-or-remark @ Monitor!A5'],
};
