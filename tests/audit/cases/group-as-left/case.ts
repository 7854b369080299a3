import type { Cell } from '../../../../src/cells/cell.ts';
import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

/** Tag, measured, gap, as left, gap as left, group, voting, bypass. */
const rows: readonly (readonly Cell[])[] = [
  ['A', 160, null, 200, null, 'moved', '2oo2', 'no'],
  ['B', 200, null, 150, null, 'moved', '2oo2', 'no'],
  ['C', 160, null, 200, null, 'one', '1oo2', 'no'],
  ['D', 160, null, null, null, 'one', '1oo2', 'no'],
  ['E', 200, -9.8, 200, -2.4, 'idle', '2oo2', 'no'],
  ['F', 200, null, null, null, 'idle', '2oo2', 'no'],
  ['H', 200, null, 200, null, 'passed', '1oo2', 'yes'],
  ['I', 200, null, 160, null, 'passed', '1oo2', 'no'],
  ['J', 200, null, null, null, 'unread', '1oo1', 'no'],
];

const late = (row: number) => [`alert-late @ Monitor!C${row}`, `danger-late @ Monitor!D${row}`];
const grouped = (row: number) => [`group-late @ Monitor!F${row}`, `group-late @ Monitor!F${row}`];
const left = (what: string, row: number) =>
  ['alert', 'danger'].map((name) => `${name}-as-left-${what} @ Channels!D${row}`);

export const golden: GoldenCase = {
  because:
    'By hand with Kc 200 mV/mil, alert 3, danger 5 mil, T = 5·200/Km, M-out-of-N at the M-th smallest (IEC 61511 voting), of the members as they are now; the vote of what was found stands beside it. moved, 2oo2: found 6.25 and 5 → 6.25 by A; now 5 and 1000/150 = 6.6667 → 6.6667 by B. one, 1oo2: found 6.25 twice; now 5 of C beside the 6.25 that D was found at and not corrected → 5 by C. idle, 2oo2: at −2.4 V E is linear over 2·0.4 V/0.2 = 4 mil, less than its danger of 5 and more than its alert of 3: now danger has one vote of two. passed, 1oo2: H is in bypass, so I alone decides: 5 found, 6.25 now. unread: nothing measured again.',
  book: book(
    [
      'Channels',
      [
        [
          'Tag',
          'Measured sensitivity (mV/mil)',
          'Gap voltage (V)',
          'As-left sensitivity (mV/mil)',
          'As-left gap voltage (V)',
        ],
        ...rows.map((row) => row.slice(0, 5)),
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
          'Group',
          'Voting',
          'Bypass',
        ],
        ...rows.map((row): Cell[] => [row[0] ?? null, 200, 3, 5, ...row.slice(5)]),
      ],
    ],
  ),
  channels: [
    {
      tag: 'E',
      verdict: 'unreachable',
      findings: [
        'danger-out-of-linear-reach @ Monitor!D6',
        'danger-as-left-worse @ Channels!D6',
        'group-cannot-trip @ Monitor!F6',
      ],
    },
    {
      tag: 'H',
      verdict: 'within',
      is: { inBypass: true },
      findings: ['channel-in-bypass @ Monitor!G8', ...grouped(8)],
    },
    { tag: 'B', verdict: 'late', findings: [...late(3), ...left('worse', 3), ...grouped(3)] },
    { tag: 'D', verdict: 'late', findings: late(5) },
    { tag: 'I', verdict: 'late', findings: [...late(9), ...left('worse', 9), ...grouped(9)] },
    { tag: 'A', verdict: 'within', findings: [...left('cured', 2), ...grouped(2)] },
    { tag: 'C', verdict: 'within', findings: left('cured', 4) },
    { tag: 'F', verdict: 'within', findings: ['group-cannot-trip @ Monitor!F7'] },
    { tag: 'J', verdict: 'within' },
  ],
  groups: [
    {
      name: 'moved',
      threshold: 'danger',
      effective: 1000 / 150,
      late: true,
      decidedBy: ['B'],
      asFound: { effective: 6.25, canTrip: true, decidedBy: ['A'] },
      findings: ['group-late @ Monitor!F2'],
    },
    {
      name: 'moved',
      threshold: 'alert',
      effective: 4,
      late: true,
      asFound: { effective: 3.75, canTrip: true, decidedBy: ['A'] },
      findings: ['group-late @ Monitor!F2'],
    },
    {
      name: 'one',
      threshold: 'danger',
      effective: 5,
      late: false,
      decidedBy: ['C'],
      asFound: { effective: 6.25, canTrip: true, decidedBy: ['C', 'D'] },
    },
    {
      name: 'one',
      threshold: 'alert',
      effective: 3,
      late: false,
      asFound: { effective: 3.75, canTrip: true, decidedBy: ['C', 'D'] },
    },
    {
      name: 'idle',
      threshold: 'danger',
      effective: null,
      canTrip: false,
      decidedBy: [],
      asFound: { effective: 5, canTrip: true, decidedBy: ['E', 'F'] },
      findings: ['group-cannot-trip @ Monitor!F6'],
    },
    {
      name: 'idle',
      threshold: 'alert',
      effective: 3,
      decidedBy: ['E', 'F'],
      asFound: { effective: 3, canTrip: true, decidedBy: ['E', 'F'] },
    },
    {
      name: 'passed',
      threshold: 'danger',
      effective: 6.25,
      late: true,
      decidedBy: ['I'],
      asFound: { effective: 5, canTrip: true, decidedBy: ['I'] },
      findings: ['group-late @ Monitor!F8'],
    },
    {
      name: 'passed',
      threshold: 'alert',
      effective: 3.75,
      late: true,
      asFound: { effective: 3, canTrip: true, decidedBy: ['I'] },
      findings: ['group-late @ Monitor!F8'],
    },
    { name: 'unread', threshold: 'danger', effective: 5, asFound: null },
    { name: 'unread', threshold: 'alert', effective: 3, asFound: null },
  ],
  summary: { late: 3, within: 4, unreachable: 1, inBypass: 1, groupsThatCannotTrip: 1 },
};
