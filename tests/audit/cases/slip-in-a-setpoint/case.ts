import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

export const golden: GoldenCase = {
  because:
    'By hand: danger 127 mil against alert 5 mil is 25.4; a full scale of 127 against danger 5 mil too, a limit likewise. Danger 0.3 mil is 7.6 µm, below the 12 µm, and 127 mil 3226 µm, above the 1000 µm that is ordinary (common practice, no source).',
  book: book(
    [
      'Channels',
      [
        ['Tag', 'Measured sensitivity (mV/mil)', 'Limit (mil)'],
        ['alert', 200, null],
        ['scale', 200, null],
        ['limit', 200, 127],
        ['small', 200, null],
        ['large', 200, null],
      ],
    ],
    [
      'Monitor',
      [
        ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)', 'Full scale (mil)'],
        ['alert', 200, 5, 127, null],
        ['scale', 200, 3, 5, 127],
        ['limit', 200, 3, 5, null],
        ['small', 200, 0.2, 0.3, null],
        ['large', 200, 30, 50, null],
      ],
    ],
  ),
  channels: [
    {
      tag: 'alert',
      verdict: 'within',
      findings: ['unit-slip-suspected @ Monitor!D2', 'unit-slip-suspected @ Monitor!D2'],
    },
    { tag: 'scale', verdict: 'within', findings: ['unit-slip-suspected @ Monitor!D3'] },
    { tag: 'limit', verdict: 'within', findings: ['unit-slip-suspected @ Monitor!D4'] },
    { tag: 'small', verdict: 'within', findings: ['unit-slip-suspected @ Monitor!D5'] },
    { tag: 'large', verdict: 'within', findings: ['unit-slip-suspected @ Monitor!D6'] },
  ],
  says: [/mil written into a µm column/, /µm written into a mil column/],
};
