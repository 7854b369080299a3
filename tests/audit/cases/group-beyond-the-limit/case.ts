import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

export const golden: GoldenCase = {
  because:
    'By hand: 2oo2 of 5 and 5 × 200/160 = 6.25 mil acts at 6.25 mil, later than 5/0.95 = 5.26 and beyond the limit of 6 mil of one member.',
  book: book(
    [
      'Channels',
      [
        ['Tag', 'Measured sensitivity (mV/mil)', 'Limit (mil)'],
        ['A', 200, 6],
        ['B', 160, null],
      ],
    ],
    [
      'Monitor',
      [
        ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)', 'Voting group', 'Voting'],
        ['A', 200, 3, 5, 'X', '2oo2'],
        ['B', 200, 3, 5, 'X', '2oo2'],
      ],
    ],
  ),
  channels: [
    {
      tag: 'B',
      verdict: 'late',
      findings: [
        'alert-late @ Monitor!C3',
        'danger-late @ Monitor!D3',
        'group-beyond-limit @ Monitor!F3',
        'group-late @ Monitor!F3',
        'group-late @ Monitor!F3',
      ],
    },
    {
      tag: 'A',
      verdict: 'within',
      findings: ['group-beyond-limit @ Monitor!F2', 'group-late @ Monitor!F2', 'group-late @ Monitor!F2'],
    },
  ],
  groups: [
    {
      name: 'X',
      threshold: 'danger',
      intended: 5,
      effective: 6.25,
      limit: 6,
      decidedBy: ['B'],
      findings: ['group-beyond-limit @ Monitor!F2', 'group-late @ Monitor!F2'],
    },
    { name: 'X', threshold: 'alert', effective: 3.75, findings: ['group-late @ Monitor!F2'] },
  ],
};
