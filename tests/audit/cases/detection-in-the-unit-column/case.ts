import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

export const golden: GoldenCase = {
  because:
    'The header says mil and the row mil 0-p: 8 mil p-p of full scale are 4 mil 0-p, below the danger of 5 mil 0-p.',
  book: book([
    'All',
    [
      [
        'Tag',
        'Measured sensitivity (mV/mil)',
        'Configured sensitivity (mV/mil)',
        'Alert (mil)',
        'Alert unit',
        'Danger (mil)',
        'Danger unit',
        'Full scale (mil p-p)',
      ],
      ['A', 200, 200, 3, 'mil 0-p', 5, 'mil 0-p', 8],
    ],
  ]),
  channels: [
    {
      tag: 'A',
      verdict: 'unreachable',
      is: { detection: '0-p' },
      inputs: { fullScale: 4 },
      findings: ['danger-above-full-scale @ All!F2'],
    },
  ],
};
