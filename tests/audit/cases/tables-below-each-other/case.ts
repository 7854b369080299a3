import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

export const golden: GoldenCase = {
  because: 'A second table below the first ends it: its rows are no channels of the first.',
  book: book([
    'Sheet1',
    [
      ['Channel list'],
      ['Tag', 'Machine', 'Measured sensitivity (mV/mil)'],
      ['A', 'Pump', 160],
      [],
      ['Monitor'],
      [null, 'Danger (mil)', 'Alert (mil)', 'Tag', 'Configured sensitivity (mV/mil)'],
      [null, 5, 3, 'A', 200],
    ],
  ]),
  channels: [{ tag: 'A', verdict: 'late', findings: ['alert-late @ Sheet1!C7', 'danger-late @ Sheet1!B7'] }],
  problems: ['heading-or-remark @ Sheet1!A5'],
};
