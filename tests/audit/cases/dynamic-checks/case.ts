import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';
import { gaps, rowsOf, straight } from '../../recordSheets.ts';

/** Output in mV rms of a sine of that many mil peak to peak. */
const rms = (displacement: number, sensitivity: number): number =>
  (displacement * sensitivity) / (2 * Math.SQRT2);

export const golden: GoldenCase = {
  because:
    'By hand: mV p-p ÷ mil p-p, p-p = 2√2 rms. Levels of 198, 200 and 202 mV/mil: mean 200, s 2, u = 2/√3, and k of the t distribution with 2 degrees of freedom at 95.45 % is 4.527 (JCGM 100 table G.2: 4.53), U = 5.227. A record of 170 lies further away than U and 5 %, one of 199 does not. Without a record the list is compared.',
  book: book(
    [
      'All',
      [
        [
          'Tag',
          'Measured sensitivity (mV/mil)',
          'Configured sensitivity (mV/mil)',
          'Alert (mil)',
          'Danger (mil)',
        ],
        ['apart', 170, 200, 3, 5],
        ['listed', 160, 200, 3, 5],
        ['agrees', 199, 200, 3, 5],
        ['one', 200, 200, 3, 5],
      ],
    ],
    [
      'Records',
      [
        ['Tag', 'Gap (mil)', 'Output (V)'],
        ...rowsOf(['apart'], straight(170, gaps(10, 90, 20))),
        ...rowsOf(['agrees'], straight(199, gaps(10, 90, 20))),
      ],
    ],
    [
      'Shaker',
      [
        ['Tag', 'Displacement (mil p-p)', 'Output (mV rms)', 'Frequency (Hz)'],
        ...['apart', 'listed', 'agrees'].flatMap((tag) =>
          [198, 200, 202].map((sensitivity, at) => [tag, 2 + at, rms(2 + at, sensitivity), 60]),
        ),
        ['one', 4, rms(4, 200), 60],
        ['one', -1, 5, 60],
      ],
    ],
  ),
  channels: [
    {
      tag: 'listed',
      verdict: 'late',
      findings: ['alert-late @ All!D3', 'danger-late @ All!E3', 'static-and-dynamic-disagree @ Shaker!B5'],
      dynamic: { levels: 3, sensitivity: 200 },
      record: null,
    },
    {
      tag: 'apart',
      verdict: 'late',
      findings: [
        'alert-late @ All!D2',
        'danger-late @ All!E2',
        'record-without-gap-voltage @ Records!B2',
        'static-and-dynamic-disagree @ Shaker!B2',
      ],
      dynamic: { levels: 3, sensitivity: 200 },
      onCurve: {},
    },
    {
      tag: 'agrees',
      verdict: 'within',
      findings: ['record-without-gap-voltage @ Records!B7'],
      dynamic: { levels: 3, sensitivity: 200 },
    },
    {
      tag: 'one',
      verdict: 'within',
      findings: ['record-point-left-out @ Shaker!B12'],
      dynamic: { levels: 1, sensitivity: 200, uncertainty: null },
    },
  ],
};
