import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

/** Whole and shared standard uncertainties of 1.803 and 1.5 %, expanded at k = 2. */
const whole = 2 * Math.hypot(1.5, 1);
const rows = [
  ['A', 188, 'one', 'Lot 7'],
  ['B', 192, 'one', ' lot 7'],
  ['C', 197, 'one', 'LOT 7 '],
  ['D', 188, 'own', ''],
  ['E', 192, 'own', null],
  ['F', 197, 'own', null],
] as const;

const undetermined = (row: number) => [
  `alert-undetermined @ Monitor!C${row}`,
  `danger-undetermined @ Monitor!D${row}`,
];

export const golden: GoldenCase = {
  because:
    'Worked by hand and by simulation, independent of this code: 2oo3 of 188, 192, 197 for 200 mV/mil at 5 mil, where late begins at 5/0.95. The chances stand in chances.test.ts; here, that batches and shared parts change no verdict.',
  book: book(
    [
      'Channels',
      [
        [
          'Tag',
          'Machine',
          'Measured sensitivity (mV/mil)',
          'Uncertainty (%)',
          'Shared uncertainty (%)',
          'Batch',
        ],
        ...rows.map(([tag, measured, , batch]) => [tag, 'K-1', measured, whole, 3, batch]),
      ],
    ],
    [
      'Monitor',
      [
        ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)', 'Group', 'Voting'],
        ...rows.map(([tag, , group]) => [tag, 200, 3, 5, group, '2oo3']),
      ],
    ],
  ),
  channels: [
    { tag: 'A', verdict: 'undetermined', findings: undetermined(2) },
    { tag: 'D', verdict: 'undetermined', findings: undetermined(5) },
    { tag: 'B', verdict: 'undetermined', findings: undetermined(3) },
    { tag: 'E', verdict: 'undetermined', findings: undetermined(6) },
    { tag: 'C', verdict: 'undetermined', findings: undetermined(4) },
    { tag: 'F', verdict: 'undetermined', findings: undetermined(7) },
  ],
  groups: [
    { name: 'one', threshold: 'danger', effective: 1000 / 192, liveVoting: '2oo3', out: [] },
    { name: 'one', threshold: 'alert', chance: null },
    { name: 'own', threshold: 'danger', effective: 1000 / 192 },
    { name: 'own', threshold: 'alert', chance: null },
  ],
};
