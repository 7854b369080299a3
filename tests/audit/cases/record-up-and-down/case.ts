import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

/** Gaps in mil, V on the way up and on the way down, as they were read one after the other. */
const gaps = [10, 30, 50, 70, 90];
const up = [-2, -6, -10, -14, -18];
const down = [-2.04, -6.1, -10.12, -14.06, -18];

function rows(tag: string, ...runs: readonly (readonly [readonly number[], readonly number[]])[]) {
  return runs.flatMap(([at, volts]) => at.map((gap, index) => [tag, gap, volts[index] ?? null]));
}
const upwards = [gaps, up] as const;
const downwards = [gaps.toReversed(), down.toReversed()] as const;

export const golden: GoldenCase = {
  because:
    'Definitions of 43 CFR 3175.135 (read); by hand: one cycle differs most at 50 mil, −10 against −10.12 V: 0.12 V of a mean curve from −2.02 to −18 V, 0.75 %. The mean at 50 mil is −10.06 V. Three cycles repeat to 0.03 V. B has 40 mil on the way up alone, which stays out. C turns at 50 mil but comes back to one gap only: a slip, refused as before.',
  book: book(
    [
      'All',
      [
        [
          'Tag',
          'Measured sensitivity (mV/mil)',
          'Gap voltage (V)',
          'Configured sensitivity (mV/mil)',
          'Alert (mil)',
          'Danger (mil)',
        ],
        ...['A', 'B', 'C', 'D'].map((tag) => [tag, 200, -10.06, 200, 3, 5]),
      ],
    ],
    [
      'Records',
      [
        ['Tag', 'Gap (mil)', 'Output (V)'],
        ...rows('A', upwards, downwards),
        ...rows(
          'B',
          [
            [10, 30, 40, 50, 70, 90],
            [-2, -6, -8, -10, -14, -18],
          ],
          downwards,
        ),
        ...rows('C', [
          [10, 30, 50, 30, 70, 90],
          [-2, -6, -10, -6.1, -14, -18],
        ]),
        ...rows(
          'D',
          upwards,
          downwards,
          [gaps, [-2.01, -6.01, -9.97, -14, -18]],
          [gaps.toReversed(), [-18, -14.06, -10.12, -6.1, -2.04]],
        ),
      ],
    ],
  ),
  channels: [
    { tag: 'C', verdict: 'incomplete', findings: ['record-unusable @ Records!B26'] },
    { tag: 'D', verdict: 'within', findings: ['record-read-up-and-down @ Records!B29'] },
    {
      tag: 'A',
      verdict: 'within',
      findings: ['record-read-up-and-down @ Records!B2'],
      record: { operatingGap: 50 },
    },
    {
      tag: 'B',
      verdict: 'within',
      findings: ['record-read-up-and-down @ Records!B12'],
      record: { operatingGap: 50 },
    },
  ],
  says: [
    /one cycle: hysteresis 0\.12 V \(0\.75 % of the span, 0\.6009 mil\); the mean curve counts/u,
    /Gaps read one way only stay out: 40 mil/u,
    /2 cycles: hysteresis 0\.15 V .*, repeatability 0\.03 V/u,
  ],
};
