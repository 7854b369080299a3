import { book } from '../../book.ts';
import type { GoldenCase } from '../../golden.ts';

export const golden: GoldenCase = {
  because:
    'A tick is a yes. A mark that is not understood can not count as a no: the member can not be shown to act (IEC 61511 voting, ' +
    '1oo1 with its only member out cannot trip), and the channel is no better than incomplete. A channel in bypass is counted apart.',
  book: book(
    [
      'Channels',
      [
        ['Tag', 'Measured sensitivity (mV/mil)'],
        ['M-1', 200],
        ['M-2', 200],
        ['M-3', 200],
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
        ['M-1', 200, 3, 5, 'tick', '1oo1', '✓'],
        ['M-2', 200, 3, 5, 'question', '1oo1', '?'],
        ['M-3', 200, 3, 5, 'dash', '1oo1', '-'],
      ],
    ],
  ),
  channels: [
    {
      tag: 'M-1',
      verdict: 'within',
      is: { inBypass: true },
      inputs: { bypass: true },
      findings: [
        'channel-in-bypass @ Monitor!G2',
        'group-cannot-trip @ Monitor!F2',
        'group-cannot-act @ Monitor!F2',
      ],
    },
    {
      tag: 'M-2',
      verdict: 'incomplete',
      is: { inBypass: null },
      inputs: { bypass: null },
      findings: [
        'value-not-understood @ Monitor!G3',
        'group-cannot-trip @ Monitor!F3',
        'group-cannot-act @ Monitor!F3',
      ],
    },
    { tag: 'M-3', verdict: 'within', inputs: { bypass: false }, findings: [] },
  ],
  groups: [
    { name: 'tick', threshold: 'danger', canTrip: false, findings: ['group-cannot-trip @ Monitor!F2'] },
    { name: 'tick', threshold: 'alert', canTrip: false, findings: ['group-cannot-act @ Monitor!F2'] },
    { name: 'question', threshold: 'danger', canTrip: false, findings: ['group-cannot-trip @ Monitor!F3'] },
    { name: 'question', threshold: 'alert', canTrip: false, findings: ['group-cannot-act @ Monitor!F3'] },
    { name: 'dash', threshold: 'danger', canTrip: true, effective: 5 },
    { name: 'dash', threshold: 'alert', canTrip: true, effective: 3 },
  ],
  attention: [
    'critical group-cannot-trip tick danger',
    'critical group-cannot-trip question danger',
    'critical in-bypass M-1',
    'critical incomplete M-2 danger',
    'warning group-cannot-act tick alert',
    'warning group-cannot-act question alert',
  ],
  summary: { within: 1, inBypass: 1, incomplete: 1, groupsThatCannotTrip: 2 },
};
