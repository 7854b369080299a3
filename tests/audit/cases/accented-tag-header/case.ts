import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

export const golden: GoldenCase = {
  because: 'Header matching ignores accents, spaces and punctuation, in the tag column as in any other.',
  book: book(
    [
      'Channels',
      [
        ['Tág', 'Measured sensitivity (mV/mil)'],
        ['A', 200],
      ],
    ],
    [
      'Monitor',
      [
        ['T.A.G.', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)'],
        ['A', 200, 3, 5],
      ],
    ],
  ),
  channels: [{ tag: 'A', verdict: 'within' }],
};
