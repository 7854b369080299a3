import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

export const golden: GoldenCase = {
  because:
    'A header that says p-p beside a row that says 0-p differ by a factor of 2; that is said, and the row is used: 12 mil p-p of full scale are 6 mil 0-p.',
  book: book([
    'All',
    [
      [
        'Tag',
        'Measured sensitivity (mV/mil)',
        'Configured sensitivity (mV/mil)',
        'Alert (mil p-p)',
        'Danger (mil p-p)',
        'Full scale (mil p-p)',
        'Detection',
      ],
      ['row', 200, 200, 3, 5, 12, '0-pk'],
      ['same', 200, 200, 3, 5, 12, 'peak to peak'],
      ['what', 200, 200, 3, 5, 12, 'average'],
    ],
  ]),
  channels: [
    {
      tag: 'row',
      verdict: 'within',
      is: { detection: '0-p' },
      inputs: { fullScale: 6 },
      thresholds: { alert: { setpoint: 3 }, danger: { setpoint: 5 } },
      findings: ['detection-contradicts-header @ All!G2'],
    },
    { tag: 'same', verdict: 'within', is: { detection: 'p-p' } },
    { tag: 'what', verdict: 'within', findings: ['value-not-understood @ All!G4'] },
  ],
};
