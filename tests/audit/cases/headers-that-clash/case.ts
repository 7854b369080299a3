import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

export const golden: GoldenCase = {
  because:
    'Where two columns fit one meaning the audit stops and says which headers it saw: here two alerts, told apart only by punctuation and case.',
  book: book([
    'All',
    [
      [],
      [
        'Tag',
        'Measured sensitivity (mV/mil)',
        'Configured sensitivity (mV/mil)',
        'Alert (mil)',
        'ALERT [µm]',
        'Danger (mil)',
        'Notes',
      ],
      ['A', 200, 200, 3, 76, 5, ''],
    ],
  ]),
  refused: ["'All', row 2", "'alert'", "D 'Alert (mil)', E 'ALERT [µm]'", "G 'Notes'"],
};
