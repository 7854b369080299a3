import { book, listObject, sheet } from '../../book.ts';
import type { GoldenCase } from '../../golden.ts';

export const golden: GoldenCase = {
  because:
    'A row typed right below a spreadsheet table belongs to the list as people read it; nothing is dropped. By hand: ' +
    '5 mil × 200/160 = 6.25 mil.',
  book: book(
    sheet(
      'Channels',
      [
        ['Tag', 'Measured sensitivity (mV/mil)'],
        ['B-1', 200],
        ['B-2', 160],
      ],
      { tables: [listObject('List', [1, 1, 2, 2])] },
    ),
    [
      'Monitor',
      [
        ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)'],
        ['B-1', 200, 3, 5],
        ['B-2', 200, 3, 5],
      ],
    ],
  ),
  channels: [
    {
      tag: 'B-2',
      verdict: 'late',
      thresholds: { alert: {}, danger: { effective: 6.25 } },
      findings: ['alert-late @ Monitor!C3', 'danger-late @ Monitor!D3'],
    },
    { tag: 'B-1', verdict: 'within', findings: [] },
  ],
  problems: ['row-below-table @ Channels!A3'],
};
