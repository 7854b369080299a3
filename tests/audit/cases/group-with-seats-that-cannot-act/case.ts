import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

export const golden: GoldenCase = {
  because:
    'A member above its full scale, one without its sensitivity and one that is not in the channel list count as infinite; of four, one can act: 2oo4 cannot trip. Its alert: two can act (3 and 3.75 mil), so at 3.75. Intended: the second smallest setpoint.',
  book: book(
    [
      'Channels',
      [
        ['Tag', 'Measured sensitivity (mV/mil)', 'Machine'],
        ['ok', 160, 'M'],
        ['scale', 200, 'M'],
        ['blank', null, 'M'],
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
          'Full scale (mil)',
          'Voting group',
          'Voting',
        ],
        ['ok', 200, 3, 5, 10, 'X', '2oo4'],
        ['scale', 200, 3, 6, 5, 'X', '2oo4'],
        ['blank', 200, 3, 5.5, 10, 'X', '2oo4'],
        ['lone', 200, 3, 7, 10, 'X', '2oo4'],
      ],
    ],
  ),
  channels: [
    {
      tag: 'scale',
      verdict: 'unreachable',
      findings: [
        'danger-above-full-scale @ Monitor!D3',
        'group-cannot-trip @ Monitor!G3',
        'group-late @ Monitor!G3',
      ],
    },
    {
      tag: 'ok',
      verdict: 'late',
      findings: [
        'alert-late @ Monitor!C2',
        'danger-late @ Monitor!D2',
        'group-cannot-trip @ Monitor!G2',
        'group-late @ Monitor!G2',
      ],
    },
    {
      tag: 'blank',
      verdict: 'incomplete',
      thresholds: { alert: { setpoint: 3, effective: null }, danger: { setpoint: 5.5, effective: null } },
      findings: ['value-missing @ Channels!B4', 'group-cannot-trip @ Monitor!G4', 'group-late @ Monitor!G4'],
    },
  ],
  groups: [
    {
      name: 'X',
      threshold: 'danger',
      voting: '2oo4',
      intended: 5.5,
      effective: null,
      canTrip: false,
      findings: ['group-cannot-trip @ Monitor!G2'],
    },
    {
      name: 'X',
      threshold: 'alert',
      intended: 3,
      effective: 3.75,
      canTrip: true,
      decidedBy: ['ok'],
      findings: ['group-late @ Monitor!G2'],
    },
  ],
  problems: ['settings-without-channel @ Monitor!A5'],
  summary: { groupsThatCannotTrip: 1 },
};
