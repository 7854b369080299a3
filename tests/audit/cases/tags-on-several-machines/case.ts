import type { GoldenCase } from '../../golden.ts';
import { book, sheet } from '../../book.ts';

export const golden: GoldenCase = {
  because:
    'Where a tag stands on several machines, machine and tag tell a channel: 5 × 200/160 = 6.25 mil on P-1, 5 mil on P-2. Settings without a machine are of neither; a record that names the tag alone is nobody’s. ' +
    'What stands in a hidden column alone is asked, and lists that differ are not chosen from.',
  standard: false,
  book: book(
    [
      'Probes',
      [
        ['Machine', 'Tag', 'Measured sensitivity (mV/mil)'],
        ['P-1', '1X', 160],
        ['P-2', '1X', 200],
        ['P-1', '2X', 200],
        ['P-2', '2X', 200],
        ['P-4', '4X', 200],
      ],
    ],
    sheet(
      'More',
      [
        ['Machine', 'Tag', 'Measured sensitivity (mV/mil)'],
        ['P-3', '3X', 200],
      ],
      { hiddenColumns: new Set([3]) },
    ),
    [
      'Monitor',
      [
        ['Machine', 'Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)'],
        ['P-1', '1X', 200, 3, 5],
        ['P-2', '1X', 200, 3, 5],
        [null, '2X', 200, 3, 5],
        ['P-3', '3X', 200, 3, 5],
        ['P-4', '4X', 200, 3, 5],
      ],
    ],
    [
      'Second rack',
      [
        ['Machine', 'Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)'],
        ['P-4', '4X', 200, 3, 6],
      ],
    ],
    [
      'Record',
      [['Tag: 1X'], ['Gap (mil)', 'Output (V)'], ...[20, 30, 40, 50, 60].map((gap) => [gap, -gap * 0.2])],
    ],
  ),
  channels: [
    {
      tag: '1X',
      verdict: 'late',
      is: { machine: 'P-1' },
      thresholds: { alert: { effective: 3.75 }, danger: { effective: 6.25 } },
      findings: ['alert-late @ Monitor!D2', 'danger-late @ Monitor!E2'],
    },
    ...['P-1', 'P-2'].map((machine) => ({
      tag: '2X',
      verdict: 'incomplete' as const,
      is: { machine },
      findings: Array.from({ length: 3 }, () => 'machine-not-said @ Monitor!B4'),
    })),
    {
      tag: '4X',
      verdict: 'incomplete',
      thresholds: { alert: { setpoint: 3 }, danger: { setpoint: null } },
      findings: ['lists-differ @ Monitor!B6'],
    },
    { tag: '3X', verdict: 'incomplete', findings: ['meaning-not-certain @ More!C2'] },
    {
      tag: '1X',
      verdict: 'within',
      is: { machine: 'P-2' },
      thresholds: { alert: { effective: 3 }, danger: { effective: 5 } },
    },
  ],
  problems: ['record-of-several-machines @ Record!A3'],
  notRead: ['column measured sensitivity @ More!C1'],
};
