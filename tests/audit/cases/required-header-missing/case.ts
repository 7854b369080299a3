import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

export const golden: GoldenCase = {
  because: 'Where no column fits a required meaning the audit stops, and says which headers it saw.',
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
  refused: ["'Monitor', row 1", "no column 'danger'", "D 'High high (mil)'"],
};
