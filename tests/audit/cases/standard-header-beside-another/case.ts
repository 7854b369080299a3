import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

export const golden: GoldenCase = {
  because:
    'Two columns fit the danger setpoint, one by its standard header and one by another that people write: which one the monitor holds is not guessed.',
  book: book([
    'All',
    [
      [
        'Tag',
        'Measured sensitivity (mV/mil)',
        'Configured sensitivity (mV/mil)',
        'Alert (mil)',
        'Danger (mil)',
        'Danger setpoint (mil)',
      ],
      ['A', 200, 200, 3, 5, 4],
    ],
  ]),
  refused: ["'All', row 1", "'danger'", "E 'Danger (mil)', F 'Danger setpoint (mil)'"],
};
