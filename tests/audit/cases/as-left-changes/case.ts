import type { GoldenCase } from '../../golden.ts';
import type { Cell } from '../../../../src/cells/cell.ts';
import { book } from '../../book.ts';

const channels: readonly (readonly Cell[])[] = [
  ['cured', 160, null, 200, null, null],
  ['still', 160, null, 170, null, null],
  ['farther', 160, null, 140, null, null],
  ['newly', 200, null, 160, null, null],
  ['over', 160, null, 220, null, null],
  ['unsure', 160, null, 190, 3, null],
  ['near', 200, -9.8, 200, null, -2.4],
  ['sound', 200, null, 199, null, null],
];
const late = (row: number) => [`alert-late @ Monitor!C${row}`, `danger-late @ Monitor!D${row}`];
const both = (what: string, row: number) =>
  ['alert', 'danger'].map((name) => `${name}-as-left-${what} @ Channels!D${row}`);

export const golden: GoldenCase = {
  because:
    'By hand with Kc 200 mV/mil, alert 3, danger 5 mil, T = 5·200/Km: 170 → 5.88235 (17.6 % late), 140 → 7.14286 (42.9 %, farther off than 25 % by 17.9 points), 220 → 4.54545 (early, for 1.1 is above 1.05; its 16 V of linear span are 16/0.22 = 73 mil, short of 80). 190 with U = 3 %: 0.95 − 0.0285 to 0.95 + 0.0285 straddles 0.95. At −2.4 V the chain is linear over 2·0.4 V/0.2 = 4 mil: less than 5, more than 3. 199/200 is within both times. Verdict, order and counts are of now; what was found stands beside it. Of those that are within now only the first was not when found.',
  book: book(
    [
      'Channels',
      [
        [
          'Tag',
          'Measured sensitivity (mV/mil)',
          'Gap voltage (V)',
          'As-left sensitivity (mV/mil)',
          'As-left uncertainty (%)',
          'As-left gap voltage (V)',
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
      tag: 'near',
      verdict: 'unreachable',
      inputs: { linearReach: 4, gapVoltage: -2.4 },
      findings: ['danger-out-of-linear-reach @ Monitor!D8', 'danger-as-left-worse @ Channels!D8'],
      thresholds: {
        alert: { verdict: 'within', change: 'unchanged' },
        danger: {
          verdict: 'unreachable',
          unreachable: ['out of the linear reach'],
          change: 'now unreachable',
        },
      },
      asFound: { verdict: 'within', gapVoltage: -9.8, linearReach: 2 * 39 },
    },
    {
      tag: 'farther',
      verdict: 'late',
      findings: [...late(4), ...both('worse', 4)],
      thresholds: {
        alert: { change: 'still late' },
        danger: { effective: 1000 / 140, change: 'still late' },
      },
    },
    {
      tag: 'newly',
      verdict: 'late',
      findings: [...late(5), ...both('worse', 5)],
      thresholds: {
        alert: { effective: 3.75, change: 'now late' },
        danger: { effective: 6.25, change: 'now late', interimSetpoint: 4 },
      },
      asFound: { verdict: 'within' },
      exposure: [],
    },
    {
      tag: 'still',
      verdict: 'late',
      findings: late(3),
      thresholds: {
        alert: { effective: 600 / 170, change: 'still late' },
        danger: { effective: 1000 / 170, shiftFraction: 200 / 170 - 1, change: 'still late' },
      },
      asFound: { verdict: 'late' },
      exposure: [
        { name: 'alert', multiplier: 1, from: null, to: null, days: null, goesOn: true },
        { name: 'danger', multiplier: 1, from: null, to: null, days: null, goesOn: true },
      ],
    },
    {
      tag: 'unsure',
      verdict: 'undetermined',
      findings: ['alert-undetermined @ Monitor!C7', 'danger-undetermined @ Monitor!D7'],
      sensitivity: { measured: 190, error: -0.05, uncertainty: 0.03, coverage: 2 },
      thresholds: {
        alert: { change: 'now undetermined' },
        danger: { low: 1000 / (190 * 1.03), high: 1000 / (190 * 0.97), change: 'now undetermined' },
      },
      exposure: [
        { name: 'alert', multiplier: 1, from: null, to: null, days: null, goesOn: null },
        { name: 'danger', multiplier: 1, from: null, to: null, days: null, goesOn: null },
      ],
    },
    {
      tag: 'over',
      verdict: 'early',
      findings: ['alert-early @ Monitor!C6', 'danger-early @ Monitor!D6', 'linear-range-short @ Channels!B6'],
      thresholds: {
        alert: { change: 'now early' },
        danger: { effective: 1000 / 220, verdict: 'early', change: 'now early' },
      },
      exposure: [
        { name: 'alert', multiplier: 1, from: null, to: null, days: null, goesOn: false },
        { name: 'danger', multiplier: 1, from: null, to: null, days: null, goesOn: false },
      ],
    },
    {
      tag: 'sound',
      verdict: 'within',
      thresholds: { alert: { change: 'unchanged' }, danger: { change: 'unchanged' } },
    },
    {
      tag: 'cured',
      verdict: 'within',
      findings: both('cured', 2),
      thresholds: { alert: { change: 'corrected' }, danger: { change: 'corrected' } },
      asFound: { verdict: 'late' },
    },
  ],
  attention: [
    'critical unreachable near danger',
    'critical late farther danger',
    'critical late newly danger',
    'critical late still danger',
    'critical undetermined unsure danger',
    'warning late farther alert',
    'warning late newly alert',
    'warning late still alert',
    'warning undetermined unsure alert',
    'warning early over alert',
    'warning early over danger',
    'warning finding near danger danger-as-left-worse',
    'warning finding farther alert alert-as-left-worse',
    'warning finding farther danger danger-as-left-worse',
    'warning finding newly alert alert-as-left-worse',
    'warning finding newly danger danger-as-left-worse',
  ],
  summary: {
    late: 3,
    within: 2,
    unreachable: 1,
    undetermined: 1,
    early: 1,
    asLeft: 8,
    corrected: 1,
  },
  says: [
    /^Danger 5 mil acts at 5\.882 mil: 0\.8824 mil \(17\.6 %\) late/,
    /OK as found, late as left, at 5 mil and 6\.25 mil\. The sensitivity went from 200 mV\/mil to 160 mV\/mil/,
    /5\.11 mil .*5\.426 mil/,
  ],
};
