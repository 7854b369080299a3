import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

export const golden: GoldenCase = {
  because:
    'IEC 61511 voting: 2oo2 needs both channels, and the one in bypass gives no vote, so the group cannot trip, though each channel is right. The one in bypass is counted apart and stands first.',
  book: book(
    [
      'Channels',
      [
        ['Tag', 'Measured sensitivity (mV/mil)'],
        ['A', 200],
        ['B', 200],
      ],
    ],
    [
      'Monitor',
      [
        [
          'Tag',
          'Configured sensitivity (mV/mil)',
          'Alert (mil)',
          'Danger (mil)',
          'Voting group',
          'Voting',
          'Bypass',
        ],
        ['A', 200, 3, 5, 'G', '2oo2', 'no'],
        ['B', 200, 3, 5, 'g', '2oo2', 'Yes'],
      ],
    ],
  ),
  channels: [
    {
      tag: 'B',
      verdict: 'within',
      inputs: { bypass: true },
      findings: [
        'channel-in-bypass @ Monitor!G3',
        'group-cannot-act @ Monitor!F3',
        'group-cannot-trip @ Monitor!F3',
      ],
    },
    {
      tag: 'A',
      verdict: 'within',
      findings: ['group-cannot-act @ Monitor!F2', 'group-cannot-trip @ Monitor!F2'],
    },
  ],
  groups: [
    {
      name: 'G',
      voting: '2oo2',
      threshold: 'danger',
      intended: 5,
      effective: null,
      canTrip: false,
      decidedBy: [],
      findings: ['group-cannot-trip @ Monitor!F2'],
    },
    {
      name: 'G',
      threshold: 'alert',
      canTrip: false,
      effective: null,
      findings: ['group-cannot-act @ Monitor!F2'],
    },
  ],
  attention: [
    'critical group-cannot-trip G danger',
    'critical in-bypass B',
    'warning group-cannot-act G alert',
  ],
  summary: { within: 1, inBypass: 1, groupsThatCannotTrip: 1 },
};
