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
const lateFound = (row: number) => [`alert-late @ Monitor!C${row}`, `danger-late @ Monitor!D${row}`];
const both = (what: string, row: number) =>
  ['alert', 'danger'].map((name) => `${name}-as-left-${what} @ Channels!D${row}`);

export const golden: GoldenCase = {
  because:
    'By hand with Kc 200 mV/mil, alert 3, danger 5 mil, T = 5·200/Km: 170 → 5.88235 (17.6 % late), 140 → 7.14286 (42.9 %, farther off than 25 % by 17.9 points), 220 → 4.54545 (early, for 1.1 is above 1.05). 190 with U = 3 %: 0.95 − 0.0285 to 0.95 + 0.0285 straddles 0.95. At −2.4 V the chain is linear over 2·0.4 V/0.2 = 4 mil: less than 5, more than 3. 199/200 is within both times. Counted as late are late, unreachable and undetermined: still, farther and unsure were and are; newly and near are and were not.',
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
      tag: 'cured',
      verdict: 'late',
      findings: [...lateFound(2), ...both('cured', 2)],
      asLeft: { verdict: 'within' },
    },
    {
      tag: 'still',
      verdict: 'late',
      findings: [...lateFound(3), ...both('late', 3)],
      asLeft: { verdict: 'late' },
      asLeftThresholds: {
        alert: { effective: 600 / 170, change: 'still late' },
        danger: { effective: 1000 / 170, shiftFraction: 200 / 170 - 1, change: 'still late' },
      },
      exposure: [
        { name: 'alert', multiplier: 1, from: null, to: null, days: null, goesOn: true },
        { name: 'danger', multiplier: 1, from: null, to: null, days: null, goesOn: true },
      ],
    },
    {
      tag: 'farther',
      verdict: 'late',
      findings: [...lateFound(4), ...both('late', 4), ...both('worse', 4)],
      asLeftThresholds: {
        alert: { change: 'still late' },
        danger: { effective: 1000 / 140, change: 'still late' },
      },
    },
    {
      tag: 'over',
      verdict: 'late',
      findings: [...lateFound(6), ...both('early', 6)],
      asLeft: { verdict: 'early' },
      asLeftThresholds: {
        alert: { change: 'now early' },
        danger: { effective: 1000 / 220, verdict: 'early', change: 'now early' },
      },
      exposure: [
        { name: 'alert', multiplier: 1, from: null, to: null, days: null, goesOn: false },
        { name: 'danger', multiplier: 1, from: null, to: null, days: null, goesOn: false },
      ],
    },
    {
      tag: 'unsure',
      verdict: 'late',
      findings: [...lateFound(7), ...both('undetermined', 7)],
      asLeftSensitivity: { measured: 190, error: -0.05, uncertainty: 0.03, coverage: 2 },
      asLeftThresholds: {
        alert: { change: 'now undetermined' },
        danger: { low: 1000 / (190 * 1.03), high: 1000 / (190 * 0.97), change: 'now undetermined' },
      },
      exposure: [
        { name: 'alert', multiplier: 1, from: null, to: null, days: null, goesOn: null },
        { name: 'danger', multiplier: 1, from: null, to: null, days: null, goesOn: null },
      ],
    },
    {
      tag: 'newly',
      verdict: 'within',
      findings: [...both('late', 5), ...both('worse', 5)],
      asLeft: { verdict: 'late' },
      asLeftThresholds: {
        alert: { effective: 3.75, change: 'now late' },
        danger: { effective: 6.25, change: 'now late' },
      },
      exposure: [],
    },
    {
      tag: 'near',
      verdict: 'within',
      inputs: { linearReach: 2 * 39 },
      findings: ['danger-as-left-unreachable @ Channels!D8', 'danger-as-left-worse @ Channels!D8'],
      asLeft: { verdict: 'unreachable', gapVoltage: -2.4, linearReach: 4 },
      asLeftThresholds: {
        alert: { verdict: 'within', change: 'unchanged' },
        danger: {
          verdict: 'unreachable',
          unreachable: ['out of the linear reach'],
          change: 'now unreachable',
        },
      },
    },
    {
      tag: 'sound',
      verdict: 'within',
      asLeftThresholds: { alert: { change: 'unchanged' }, danger: { change: 'unchanged' } },
    },
  ],
  summary: {
    late: 5,
    within: 3,
    asLeft: { judged: 8, cured: 1, stillLate: 3, newlyLate: 2 },
  },
  says: [
    /^Danger 5 mil acts at 5\.882 mil as left: 0\.8824 mil \(17\.6 %\) late\. As found it was late, at 6\.25 mil\./,
    /within as found, late as left, at 5 mil and 6\.25 mil\. The sensitivity went from 200 mV\/mil to 160 mV\/mil/,
    /^Danger 5 mil acts somewhere from 5\.11 mil to 5\.426 mil as left/,
  ],
};
