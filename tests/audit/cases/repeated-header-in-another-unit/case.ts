import { book } from '../../book.ts';
import type { GoldenCase } from '../../golden.ts';

export const golden: GoldenCase = {
  because:
    'A header further down in another unit is another table: read in the first one, 6.3 mV/µm would be 6.3 mV/mil, 25.4 times ' +
    'wrong. The audit stops and says where both stand.',
  book: book(
    [
      'Channels',
      [
        ['Tag', 'Measured sensitivity (mV/mil)'],
        ['A-1', 160],
        [],
        ['Tag', 'Measured sensitivity (mV/µm)'],
        ['B-1', 6.3],
      ],
    ],
    [
      'Monitor',
      [
        ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)'],
        ['A-1', 200, 3, 5],
        ['B-1', 200, 3, 5],
      ],
    ],
  ),
  refused: ["More than one channel list was found: sheet 'Channels' row 1 and sheet 'Channels' row 4"],
};
