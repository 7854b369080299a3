import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

export const golden: GoldenCase = {
  because:
    'An alert at or above danger warns of nothing; 100 mV/mil configured is half the rated 200 (common practice, no source), 10 % is allowed: 180 is not far, 179 is.',
  book: book([
    'All',
    [
      [
        'Tag',
        'Kind',
        'Measured sensitivity (mV/mil)',
        'Configured sensitivity (mV/mil)',
        'Alert (mil)',
        'Danger (mil)',
        'Counter alert (mil)',
        'Counter danger (mil)',
        'Measured zero voltage (V)',
        'Configured zero voltage (V)',
        'Positive direction',
      ],
      ['equal', null, 200, 200, 5, 5, null, null, null, null, null],
      ['counter', 'axial', 200, 200, 15, 20, 20, 15, -10, -10, 'toward'],
      ['179', null, 179, 179, 3, 5, null, null, null, null, null],
      ['180', null, 180, 180, 3, 5, null, null, null, null, null],
    ],
  ]),
  channels: [
    { tag: 'equal', verdict: 'within', findings: ['alert-not-below-danger @ All!E2'] },
    { tag: 'counter', verdict: 'within', findings: ['alert-not-below-danger @ All!G3'] },
    { tag: '179', verdict: 'within', findings: ['configured-far-from-rated @ All!D4'] },
    { tag: '180', verdict: 'within' },
  ],
};
