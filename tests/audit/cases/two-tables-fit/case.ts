import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

const rows = (measured: number) => [
  ['Tag', 'Measured sensitivity (mV/mil)'],
  ['A', measured],
];

export const golden: GoldenCase = {
  because: 'Two lists that both fit can not be told apart: the audit stops and names both.',
  book: book(
    ['2024', rows(160)],
    ['2025', [[], ...rows(200)]],
    [
      'Monitor',
      [
        ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)'],
        ['A', 200, 3, 5],
      ],
    ],
  ),
  refused: ["sheet '2024' row 1", "sheet '2025' row 2", 'column map'],
};
