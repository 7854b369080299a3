import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

const days = ['2022-01-01', '2023-02-05', '2024-03-11'];

export const golden: GoldenCase = {
  because:
    'By hand: 200, 198, 197 and 195 mV/mil are 400 days apart, so about their mean of 197.5 the slope is −8/5 a step, the ' +
    'residuals are 0.1, −0.3, 0.3 and −0.1 with a deviation of √0.1, and the slope’s is √0.02. Student’s t of two degrees ' +
    'of freedom covers the level a at t = a·√(2/(1 − a²)) = 4.52654 (closed form). With Kc = 200.1 the edge 190.095 is ' +
    'reached 1.5 + 7.405/1.6 steps or 2451.25 days on; with 203.9 the edge 193.705 after 1548.75 days, within 730 of the ' +
    'last reading. Span: (1.6·d − gap)² = t²·0.1·(1/4 + d²/5), which a few lines of Python solve: 1237.27 and 2221.86, 1900.88 and 3707.25 days. The metric history says the same divided by 25.4.',
  book: book(
    [
      'Channels',
      [
        ['Tag', 'Measured sensitivity (mV/mil)', 'Calibrated on'],
        ['V-1', 195, '2025-04-15'],
        ['V-2', 195, '2025-04-15'],
        ['V-3', 195, '2025-04-15'],
      ],
    ],
    [
      'Monitor',
      [
        ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)'],
        ['V-1', 200.1, 3, 5],
        ['V-2', 203.9, 3, 5],
        ['V-3', 200.1, 3, 5],
      ],
    ],
    [
      'Readings kept',
      [
        ['Sensitivities over the years'],
        [],
        ['Date', 'Sensitivity', 'Unit', 'Tag', 'Uncertainty (%)', 'By'],
        [days[2]!, 197, 'mV/mil', 'V-1', 2, 'KP'],
        [days[0]!, 200, 'mV/mil', ' v-1', null, null],
        [days[1]!, 198, 'mV/mil', 'V-1', 2, null],
        [days[1]!, 198, 'mV/mil', 'V-1', null, 'entered twice'],
        ...[200, 198, 197].map((value, at) => [days[at]!, value / 25.4, 'mV/µm', 'V-2', null, null]),
      ],
    ],
  ),
  channels: [
    {
      tag: 'V-2',
      verdict: 'within',
      findings: ['drift-leaves-tolerance @ Channels!B3'],
      drift: {
        perYear: -0.004 * 365.25,
        perYearFraction: (-0.004 * 365.25) / 203.9,
        leaves: {
          state: 'inside',
          limit: 203.9 * 0.95,
          days: 1548.75,
          on: '2026-03-29',
          earliest: '2025-05-22',
          latest: '2028-02-01',
        },
      },
    },
    {
      tag: 'V-1',
      verdict: 'within',
      findings: ['drift-of-sensitivity @ Channels!B2'],
      drift: {
        unit: 'mV/mil',
        startsAnew: null,
        days: 1200,
        perYear: -0.004 * 365.25,
        perYearFraction: (-0.004 * 365.25) / 200.1,
        standardUncertainty: (Math.sqrt(0.02) / 400) * 365.25,
        expandedUncertainty: 4.526536687430189 * (Math.sqrt(0.02) / 400) * 365.25,
        coverage: 4.526536687430189,
        degreesOfFreedom: 2,
        correlation: -1.6 * Math.sqrt(5 / 13),
        residualDeviation: Math.sqrt(0.1),
        atFirst: 199.9,
        leaves: {
          state: 'inside',
          limit: 200.1 * 0.95,
          days: 2451.25,
          on: '2028-09-17',
          earliest: '2027-03-16',
          latest: '2032-02-26',
        },
      },
    },
    { tag: 'V-3', verdict: 'within', drift: null },
  ],
  says: [
    /drifts by −1\.461 mV\/mil a year \(−0\.717 % of the configured, ± 0\.5845 mV\/mil/,
    /leaves the tolerance of ±5 % at 193\.7 mV\/mil on 2026-03-29 \(between 2025-05-22 and 2028-02-01\)\. The next calibration is due only on 2027-04-15, 730 days/,
  ],
};
