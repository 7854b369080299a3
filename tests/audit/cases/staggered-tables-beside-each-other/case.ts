import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

export const golden: GoldenCase = {
  because: 'Two tables beside each other, one a row lower: neither ends the other, and no row is lost.',
  book: book([
    'Both',
    [
      ['Tag', 'Machine', 'Measured sensitivity (mV/mil)'],
      ['A', 'Pump', 160, null, 'Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)'],
      ['B', 'Pump', 200, null, 'A', 200, 3, 5],
      [null, null, null, null, 'B', 200, 3, 5],
    ],
  ]),
  channels: [
    { tag: 'A', verdict: 'late', findings: ['alert-late @ Both!G3', 'danger-late @ Both!H3'] },
    { tag: 'B', verdict: 'within' },
  ],
};
