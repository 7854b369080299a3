import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

export const golden: GoldenCase = {
  because:
    '76.2 µm are 3 mil: the intended alert of the group is 3 mil, also where a member lacks its sensitivity.',
  book: book(
    [
      'Channels',
      [
        ['Tag', 'Measured sensitivity (mV/mil)', 'Machine'],
        ['A', 200, 'M'],
        ['B', null, 'M'],
      ],
    ],
    [
      'Monitor',
      [
        ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (µm)', 'Danger (mil)', 'Voting group', 'Voting'],
        ['A', 200, 76.2, 5, 'X', '2oo2'],
        ['B', 200, 76.2, 5, 'X', '2oo2'],
      ],
    ],
  ),
  channels: [
    {
      tag: 'B',
      verdict: 'incomplete',
      findings: [
        'group-cannot-act @ Monitor!F3',
        'group-cannot-trip @ Monitor!F3',
        'value-missing @ Channels!B3',
      ],
    },
    {
      tag: 'A',
      verdict: 'within',
      findings: ['group-cannot-act @ Monitor!F2', 'group-cannot-trip @ Monitor!F2'],
    },
  ],
  groups: [
    { name: 'X', threshold: 'danger', intended: 5, findings: ['group-cannot-trip @ Monitor!F2'] },
    { name: 'X', threshold: 'alert', intended: 3, findings: ['group-cannot-act @ Monitor!F2'] },
  ],
  problems: ['units-mixed @ Monitor!D2'],
};
