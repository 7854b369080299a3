import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

export const golden: GoldenCase = {
  because:
    '7.87 in a column of mV/mil is the rated 200 mV/mil (common practice, no source) over 25.4: suspected, and used as it stands, so 5 × 200/7.87 = 127.1 mil, late. The other way round it is early.',
  book: book([
    'All',
    [
      [
        'Tag',
        'Measured sensitivity (mV/mil)',
        'Configured sensitivity (mV/mil)',
        'Alert (mil)',
        'Danger (mil)',
      ],
      ['measured', 7.87, 200, 3, 5],
      ['configured', 200, 7.87, 3, 5],
    ],
  ]),
  channels: [
    {
      tag: 'measured',
      verdict: 'late',
      thresholds: { alert: {}, danger: { effective: 1000 / 7.87 } },
      findings: ['alert-late @ All!D2', 'danger-late @ All!E2', 'unit-slip-suspected @ All!B2'],
    },
    {
      tag: 'configured',
      verdict: 'early',
      findings: [
        'alert-early @ All!D3',
        'danger-early @ All!E3',
        'configured-far-from-rated @ All!C3',
        'unit-slip-suspected @ All!C3',
      ],
    },
  ],
  says: [/per µm where per mil is meant/],
};
