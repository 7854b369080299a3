import type { GoldenCase } from '../../golden.ts';
import type { Cell } from '../../../../src/cells/cell.ts';
import { book } from '../../book.ts';

const channels: readonly (readonly Cell[])[] = [
  ['gap-1', 160, 'mV/mil', -9.8, null, '', null],
  ['unit-1', 160, 'mV/mil', null, 200, '', null],
  ['unit-2', 160, 'mV/mil', null, 200, 'mV/g', null],
  ['all-1', 160, 'mV/mil', null, 200, 'mV/mil', 100],
  ['zero-1', 160, 'mV/mil', null, 0, 'mV/mil', null],
  ['none-1', null, 'mV/mil', null, 200, 'mV/mil', null],
  ['sign-1', 160, 'mV/mil', 9.8, 7.9, 'mV/µm', null],
  ['metric-1', 160, 'mV/mil', null, 7.9, 'mV/µm', null],
];
const late = (row: number) => [`alert-late @ Monitor!C${row}`, `danger-late @ Monitor!D${row}`];
const not = (row: number) => `as-left-not-judged @ Channels!E${row}`;

export const golden: GoldenCase = {
  because:
    'No unit is guessed, no sensitivity of another kind is compared, an uncertainty of 100 % or a sensitivity of 0 is none, a gap voltage without its sign can’t be right: how the channel was left is not known, what was found counts, and that is said. Where the gap voltage alone was read again the sensitivity stays as found, and that is said. 7.9 mV/µm = 7.9·25.4 = 200.66 mV/mil (exact mil, NIST SP 811).',
  book: book(
    [
      'Channels',
      [
        [
          'Tag',
          'Measured sensitivity',
          'Measured sensitivity unit',
          'As-left gap voltage (V)',
          'As-left sensitivity',
          'As-left sensitivity unit',
          'As-left uncertainty (%)',
        ],
        ...channels,
      ],
    ],
    [
      'Monitor',
      [
        ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)'],
        ...channels.map(([tag]) => [tag ?? null, 200, 3, 5]),
      ],
    ],
  ),
  channels: [
    {
      tag: 'gap-1',
      verdict: 'late',
      is: { state: 'as left' },
      findings: [...late(2), 'as-left-sensitivity-missing @ Channels!E2'],
      sensitivity: { measured: 160 },
      inputs: { gapVoltage: -9.8 },
      asFound: { verdict: 'late', gapVoltage: null },
    },
    { tag: 'unit-1', verdict: 'late', findings: [...late(3), not(3), 'unit-missing @ Channels!E3'] },
    { tag: 'unit-2', verdict: 'late', findings: [...late(4), not(4), 'unit-does-not-fit @ Channels!E4'] },
    { tag: 'all-1', verdict: 'late', findings: [...late(5), not(5), 'value-out-of-range @ Channels!G5'] },
    { tag: 'zero-1', verdict: 'late', findings: [...late(6), not(6), 'value-out-of-range @ Channels!E6'] },
    {
      tag: 'sign-1',
      verdict: 'late',
      is: { state: 'as found' },
      findings: [...late(8), not(8), 'gap-voltage-positive @ Channels!D8'],
      sensitivity: { measured: 160 },
      asFound: null,
    },
    {
      tag: 'none-1',
      verdict: 'incomplete',
      findings: ['value-missing @ Channels!B7', not(7)],
      asFound: null,
      exposure: [],
    },
    {
      tag: 'metric-1',
      verdict: 'within',
      findings: ['alert-as-left-cured @ Channels!E9', 'danger-as-left-cured @ Channels!E9'],
      sensitivity: { measured: 200.66, unit: 'mV/mil', error: 0.0033 },
      thresholds: { alert: {}, danger: { effective: 1000 / 200.66 } },
    },
  ],
  problems: ['units-mixed @ Channels!E8'],
  summary: { asLeft: 2, corrected: 1, late: 6 },
};
