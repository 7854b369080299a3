import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

export const golden: GoldenCase = {
  because:
    'A velocity channel can not vote with a displacement channel; the limit of 6 mil of the one that can still holds: 6.25 mil lies beyond.',
  book: book(
    [
      'Channels',
      [
        ['Tag', 'Kind', 'Measured sensitivity', 'Measured sensitivity unit', 'Limit', 'Limit unit'],
        ['A', 'radial', 160, 'mV/mil', 6, 'mil'],
        ['B', 'velocity', 100, 'mV/(in/s)', 1, 'in/s'],
      ],
    ],
    [
      'Monitor',
      [
        [
          'Tag',
          'Configured sensitivity',
          'Configured sensitivity unit',
          'Alert',
          'Alert unit',
          'Danger',
          'Danger unit',
          'Voting group',
          'Voting',
        ],
        ['A', 200, 'mV/mil', 3, 'mil', 5, 'mil', 'X', '1oo2'],
        ['B', 100, 'mV/(in/s)', 0.3, 'in/s', 0.5, 'in/s', 'X', '1oo2'],
      ],
    ],
  ),
  channels: [
    {
      tag: 'A',
      verdict: 'late',
      findings: [
        'alert-late @ Monitor!D2',
        'danger-late @ Monitor!F2',
        'danger-beyond-limit @ Channels!E2',
        'group-beyond-limit @ Monitor!I2',
        'group-late @ Monitor!I2',
        'group-late @ Monitor!I2',
      ],
    },
    {
      tag: 'B',
      verdict: 'within',
      findings: ['group-beyond-limit @ Monitor!I3', 'group-late @ Monitor!I3', 'group-late @ Monitor!I3'],
    },
  ],
  groups: [
    {
      name: 'X',
      threshold: 'danger',
      intended: 5,
      effective: 6.25,
      limit: 6,
      findings: ['group-beyond-limit @ Monitor!I2', 'group-late @ Monitor!I2'],
    },
    { name: 'X', threshold: 'alert', intended: 3, effective: 3.75, findings: ['group-late @ Monitor!I2'] },
  ],
};
