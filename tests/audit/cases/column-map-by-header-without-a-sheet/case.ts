import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

export const golden: GoldenCase = {
  because:
    'A column map that names a header finds the table in which that header stands, without naming its sheet.',
  book: book(
    [
      'Channels',
      [
        ['Tag', 'Measured sensitivity (mV/mil)'],
        ['A', 200],
      ],
    ],
    [
      'Monitor',
      [
        ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'High high (mil)'],
        ['A', 200, 3, 5],
      ],
    ],
  ),
  map: { settings: { columns: { danger: 'High high (mil)' } } },
  channels: [{ tag: 'A', verdict: 'within' }],
};
