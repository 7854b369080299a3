import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

export const golden: GoldenCase = {
  because:
    'One column Zero voltage in one table for all could be the configured or the measured one: it can not be told, and taking it for both hides every zero shift.',
  book: book([
    'All',
    [
      [
        'Tag',
        'Kind',
        'Positive direction',
        'Zero voltage (V)',
        'Measured sensitivity (mV/mil)',
        'Configured sensitivity (mV/mil)',
        'Alert (mil)',
        'Danger (mil)',
      ],
      ['A', 'axial', 'toward', -10, 200, 200, 15, 20],
    ],
  ]),
  refused: ["D 'Zero voltage (V)'"],
};
