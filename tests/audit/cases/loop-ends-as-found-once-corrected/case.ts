import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

export const golden: GoldenCase = {
  because:
    'By hand, danger 80 of 100 % at 4 + 0.8·16 = 16.8 mA. Found at 4.4 and 18 mA it acted at 100·(16.8 − 4.4)/13.6 = 91.18 %. A was left at 0.16 mA/%: 16 mA from end to end, the lower one still 4.4 as found: 100·12.4/16 = 77.5 %, by (12.4/16 − 0.8)/0.8 = 3.1 % early, and inside 80/1.05 = 76.19. B, left at 0.12: 12 mA, 100·12.4/12 = 103.3 %, later than as found. C has 0.1 mA of uncertainty (k = 2) at 4.4 mA; left with 2 % of 16 mA, 0.32 mA for the distance: with u_A 10, B 16, u_B 0.32 and covariance 100·0.01 Fieller’s quadratic (16² − 0.32²)T² − 2(1240·16 − 1)T + (1240² − 10²) = 0 has the roots 75.93 and 79.14.',
  book: book(
    [
      'Channels',
      [
        [
          'Tag',
          'Kind',
          'Measured sensitivity (mA/%)',
          'Loop current at 0 % (mA)',
          'Loop current at 0 % uncertainty (mA)',
          'Loop current at 100 % (mA)',
          'As-left sensitivity (mA/%)',
          'As-left uncertainty (%)',
        ],
        ['A', 'loop', 0.136, 4.4, null, 18, 0.16, null],
        ['B', 'loop', 0.136, 4.4, null, 18, 0.12, null],
        ['C', 'loop', 0.136, 4.4, 0.1, 18, 0.16, 2],
      ],
    ],
    [
      'Monitor',
      [
        ['Tag', 'Configured sensitivity (mA/%)', 'Alert (%)', 'Danger (%)'],
        ['A', 0.16, 60, 80],
        ['B', 0.16, 60, 80],
        ['C', 0.16, 60, 80],
      ],
    ],
  ),
  channels: [
    {
      tag: 'B',
      verdict: 'late',
      findings: [
        'alert-late @ Monitor!C3',
        'danger-late @ Monitor!D3',
        'alert-as-left-worse @ Channels!G3',
        'danger-as-left-worse @ Channels!G3',
        'loop-ends-not-used @ Channels!D3',
      ],
      thresholds: { alert: {}, danger: { effective: 1240 / 12, verdict: 'late', change: 'still late' } },
      asFoundThresholds: { alert: {}, danger: { effective: 1240 / 13.6, verdict: 'late' } },
    },
    {
      tag: 'C',
      verdict: 'undetermined',
      findings: [
        'alert-undetermined @ Monitor!C4',
        'danger-undetermined @ Monitor!D4',
        'loop-ends-not-used @ Channels!D4',
      ],
      thresholds: {
        alert: {},
        danger: {
          effective: 77.5,
          low:
            (1240 * 16 - 1 - Math.sqrt((1240 * 16 - 1) ** 2 - (256 - 0.1024) * (1240 ** 2 - 100))) /
            (256 - 0.1024),
          high:
            (1240 * 16 - 1 + Math.sqrt((1240 * 16 - 1) ** 2 - (256 - 0.1024) * (1240 ** 2 - 100))) /
            (256 - 0.1024),
          verdict: 'undetermined',
        },
      },
    },
    {
      tag: 'A',
      verdict: 'within',
      findings: [
        'alert-as-left-cured @ Channels!G2',
        'danger-as-left-cured @ Channels!G2',
        'loop-ends-not-used @ Channels!D2',
      ],
      inputs: { loop: { at0: 4.4, at100: 20.4 } as never },
      thresholds: { alert: { effective: 57.5 }, danger: { effective: 77.5, change: 'corrected' } },
    },
  ],
  says: [/lower one stays at 4\.4 mA as found, the as-left sensitivity puts the upper one at 20\.4 mA/u],
};
