import type { GoldenCase } from '../../golden.ts';
import { book, listObject, sheet } from '../../book.ts';

export const golden: GoldenCase = {
  because:
    'Two spreadsheet tables beside each other, with totals rows, are two tables: the totals are no channels.',
  book: book(
    sheet(
      'Both',
      [
        ['Train 1', null, 'Settings'],
        [
          'Tag',
          'Measured sensitivity (mV/mil)',
          'Tag',
          'Configured sensitivity (mV/mil)',
          'Alert (mil)',
          'Danger (mil)',
        ],
        ['A', 160, 'B', 200, 3, 5],
        ['B', 200, 'A', 200, 3, 5],
        ['Total', 360, 'Total', 400, 6, 10],
      ],
      { tables: [listObject('Found', [2, 1, 5, 2], true), listObject('Set', [2, 3, 5, 6], true)] },
    ),
  ),
  channels: [
    { tag: 'A', verdict: 'late', findings: ['alert-late @ Both!E4', 'danger-late @ Both!F4'] },
    { tag: 'B', verdict: 'within' },
  ],
};
