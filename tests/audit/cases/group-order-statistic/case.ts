import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

const members = ['2oo3', '3oo3', '1oo3'].flatMap(
  (voting) =>
    [
      [`${voting} a`, voting, 200],
      [`${voting} b`, voting, 186],
      [`${voting} c`, voting, 800 / 3.7],
    ] as const,
);

const late = (row: number, group = false) => [
  `alert-late @ Monitor!C${row}`,
  `danger-late @ Monitor!D${row}`,
  ...(group ? grouped(row) : []),
];
const grouped = (row: number) => [`group-late @ Monitor!F${row}`, `group-late @ Monitor!F${row}`];
const early = (row: number, group = false) => [
  `alert-early @ Monitor!C${row}`,
  `danger-early @ Monitor!D${row}`,
  `linear-range-short @ Channels!B${row}`,
  ...(group ? grouped(row) : []),
];

export const golden: GoldenCase = {
  because:
    'Derivation (no published source): channels see one motion, so M-out-of-N acts at the M-th smallest effective threshold. Of 4, ' +
    '800/186 = 4.301 and 3.7 mil: 2oo3 at 4, 3oo3 at 4.301 (beyond 4/0.95 = 4.21: late), 1oo3 at 3.7. Setpoints are 4 mil each.',
  book: book(
    [
      'Channels',
      [['Tag', 'Measured sensitivity (mV/mil)'], ...members.map(([tag, , measured]) => [tag, measured])],
    ],
    [
      'Monitor',
      [
        ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)', 'Group', 'Voting'],
        ...members.map(([tag, voting]) => [tag, 200, 3, 4, voting, voting]),
      ],
    ],
  ),
  channels: [
    { tag: '2oo3 b', verdict: 'late', findings: late(3) },
    { tag: '3oo3 b', verdict: 'late', findings: late(6, true) },
    { tag: '1oo3 b', verdict: 'late', findings: late(9) },
    { tag: '2oo3 c', verdict: 'early', findings: early(4) },
    { tag: '3oo3 c', verdict: 'early', findings: early(7, true) },
    { tag: '1oo3 c', verdict: 'early', findings: early(10) },
    { tag: '2oo3 a', verdict: 'within' },
    { tag: '3oo3 a', verdict: 'within', findings: grouped(5) },
    { tag: '1oo3 a', verdict: 'within' },
  ],
  groups: [
    { name: '2oo3', threshold: 'danger', intended: 4, effective: 4, canTrip: true, decidedBy: ['2oo3 a'] },
    { name: '2oo3', threshold: 'alert', intended: 3, effective: 3, decidedBy: ['2oo3 a'] },
    {
      name: '3oo3',
      threshold: 'danger',
      effective: 4.3010752688172,
      decidedBy: ['3oo3 b'],
      findings: ['group-late @ Monitor!F5'],
    },
    { name: '3oo3', threshold: 'alert', effective: 600 / 186, findings: ['group-late @ Monitor!F5'] },
    { name: '1oo3', threshold: 'danger', effective: 3.7, decidedBy: ['1oo3 c'] },
    { name: '1oo3', threshold: 'alert', effective: (3 * 3.7) / 4 },
  ],
  summary: { late: 3, early: 3, within: 3, groupsThatCannotTrip: 0 },
};
