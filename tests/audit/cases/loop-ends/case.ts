import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

const loop = (
  tag: string,
  measured: number,
  unit: string,
  at0: number | null,
  at100: number | null,
  u: number | null,
  uncertainty: number | null = null,
) => [tag, 'loop', measured, unit, uncertainty, at0, u, at100, u];

export const golden: GoldenCase = {
  because:
    'Worked out apart from this code, as roots of Fieller’s quadratic. L1, span 16/0.8 = 20: danger 7.1 stands at 9.68 mA, which the loop reaches at 20·(9.68 − 4.05)/15.75 = 7.1492; with 0.04 mA at each end (k = 2) from 7.1118 to 7.1865. L2, a sensor of 95 for 100 mV/(mm/s) before the same loop, 2 %: 7.1492·100/95 = 7.5255, from 7.3728 to 7.6841. L3 has one end, L4 its ends the wrong way, L5 no full scale for its span, L6 a listed sensitivity that its ends contradict (0.8·15.75/16 = 0.7875).',
  book: book(
    [
      'Channels',
      [
        [
          'Tag',
          'Kind',
          'Measured sensitivity',
          'Unit',
          'Uncertainty (%)',
          'Loop current at 0 % (mA)',
          'Loop current at 0 % uncertainty (mA)',
          'Loop current at 100 % (mA)',
          'Loop current at 100 % uncertainty (mA)',
        ],
        loop('L1', 0.8, 'mA/(mm/s)', 4.05, 19.8, 0.04),
        loop('L2', 95, 'mV/(mm/s)', 4.05, 19.8, 0.04, 2),
        loop('L3', 0.8, 'mA/(mm/s)', 4.05, null, null),
        loop('L4', 0.8, 'mA/(mm/s)', 19.8, 4.05, null),
        loop('L5', 90, 'mV/(mm/s)', 4.05, 19.8, null),
        loop('L6', 0.7, 'mA/(mm/s)', 4.05, 19.8, null),
      ],
    ],
    [
      'Monitor',
      [
        ['Tag', 'Configured sensitivity', 'Unit', 'Alert (mm/s)', 'Danger (mm/s)', 'Full scale (mm/s)'],
        ['L1', 0.8, 'mA/(mm/s)', 5, 7.1, 20],
        ['L2', 100, 'mV/(mm/s)', 5, 7.1, 20],
        ['L3', 0.8, 'mA/(mm/s)', 5, 7.1, 20],
        ['L4', 0.8, 'mA/(mm/s)', 5, 7.1, 20],
        ['L5', 100, 'mV/(mm/s)', 5, 7.1, null],
        ['L6', 0.8, 'mA/(mm/s)', 5, 7.1, 20],
      ],
    ],
  ),
  channels: [
    {
      tag: 'L5',
      verdict: 'late',
      findings: ['alert-late @ Monitor!D6', 'danger-late @ Monitor!E6', 'loop-ends-not-used @ Channels!H6'],
    },
    {
      tag: 'L2',
      verdict: 'undetermined',
      thresholds: {
        alert: { verdict: 'undetermined' },
        danger: {
          effective: 7.525480367585631,
          low: 7.3728333502318515,
          high: 7.684072802693649,
          verdict: 'undetermined',
        },
      },
      findings: ['alert-undetermined @ Monitor!D3', 'danger-undetermined @ Monitor!E3'],
    },
    { tag: 'L6', verdict: 'incomplete', findings: ['loop-ends-not-used @ Channels!H7'] },
    { tag: 'L3', verdict: 'incomplete', findings: ['loop-ends-not-used @ Channels!H4'] },
    { tag: 'L4', verdict: 'incomplete', findings: ['loop-ends-not-used @ Channels!H5'] },
    {
      tag: 'L1',
      verdict: 'within',
      thresholds: {
        alert: { verdict: 'within' },
        danger: {
          effective: 7.14920634920635,
          low: 7.111821812762561,
          high: 7.186517334368791,
          verdict: 'within',
        },
      },
    },
  ],
  says: [
    /at 100 % is missing/u,
    /is not above the one at 0 %/u,
    /span of the loop is not known/u,
    /give 0\.78\d* mA\/\(mm\/s\), the list says 0\.7/u,
  ],
};
