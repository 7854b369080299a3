import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';
import { gaps, rowsOf } from '../../recordSheets.ts';

const flatAtFirst = gaps(10, 90, 10).map((gap): [number, number] => [
  gap,
  gap <= 20 ? -1 - 0.1 * gap : 1 - 0.2 * gap,
]);

export const golden: GoldenCase = {
  because:
    'By hand: 0.1 V/mil from 10 to 20 mil, 0.2 from there. −2.5 V is 15 mil, outside the straight part of 20 to 90 mil, where a swing T gives 0.1·T: alert 0.6 V acts at 6 mil, danger 1 V at 10 mil, twice the setpoints. −1 V lies outside the record of −2 V to −17 V, which therefore can’t show either threshold to act.',
  policy: { curve: 'linear' },
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
        ['near', 200, -2.5, 200, 3, 5],
        ['off', 200, -1, 200, 3, 5],
      ],
    ],
    [
      'Records',
      [['Tag', 'Gap (mil)', 'Output (V)'], ...rowsOf(['near'], flatAtFirst), ...rowsOf(['off'], flatAtFirst)],
    ],
  ),
  channels: [
    {
      tag: 'near',
      verdict: 'unreachable',
      findings: [
        'alert-out-of-linear-reach @ All!E2',
        'danger-out-of-linear-reach @ All!F2',
        'gap-outside-straight-part @ Records!B2',
        'alert-curve-differs @ Records!B2',
        'danger-curve-differs @ Records!B2',
      ],
      record: { operatingGap: 15, straightPart: { from: 20, to: 90 }, average: 200 },
      onCurve: { 'alert ×1': 6, 'danger ×1': 10 },
      inputs: { linearReach: 0 },
    },
    {
      tag: 'off',
      verdict: 'unreachable',
      findings: [
        'alert-out-of-linear-reach @ All!E3',
        'danger-out-of-linear-reach @ All!F3',
        'gap-outside-record @ Records!B11',
        'alert-curve-falls-short @ Records!B11',
        'danger-curve-falls-short @ Records!B11',
      ],
      record: { operatingGap: null },
      onCurve: {},
    },
  ],
};
