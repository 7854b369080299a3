import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

export const golden: GoldenCase = {
  because:
    'A header that says p-p beside a row that says 0-p differ by a factor of 2: the two contradict each other, so the row is no better than incomplete, however its numbers come out by the row; nor is one whose detection is no word for one.',
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
      verdict: 'incomplete',
      is: { detection: '0-p' },
      inputs: { fullScale: 6 },
      thresholds: { alert: { setpoint: 3 }, danger: { setpoint: 5 } },
      findings: ['detection-contradicts-header @ All!G2'],
    },
    { tag: 'what', verdict: 'incomplete', findings: ['value-not-understood @ All!G4'] },
    { tag: 'same', verdict: 'within', is: { detection: 'p-p' } },
  ],
};
