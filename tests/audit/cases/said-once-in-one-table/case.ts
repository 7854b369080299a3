import type { GoldenCase } from '../../golden.ts';
import { book, sheet } from '../../book.ts';

const header = [
  'Tag',
  'Measured sensitivity (mV/mil)',
  'Configured sensitivity (mV/mil)',
  'Alert (mil)',
  'Danger (mil)',
];

export const golden: GoldenCase = {
  because: 'One table may be both; what is said of it is said once.',
  book: book(
    sheet('All', [header, ['A', 200, 200, 3, 5], header, ['B', 200, 200, 3, 5]], {
      hidden: true,
      hiddenRows: new Set([2]),
    }),
  ),
  channels: [
    { tag: 'A', verdict: 'within', findings: ['hidden-row @ All!A2'] },
    { tag: 'B', verdict: 'within' },
  ],
  problems: ['header-repeated @ All!A3', 'hidden-sheet @ All!A1'],
};
