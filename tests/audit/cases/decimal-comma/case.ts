import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

export const golden: GoldenCase = {
  because:
    '7,87 can only be 7.87; 1,234 may be 1.234 or 1234 and is refused, so its row is incomplete. By hand: 127 µm × 7.87/7.87 = 127 µm; 7,5 gives 127 × 7.87/7.5 = 133.27 µm (0.953: within).',
  book: book(
    [
      'Channels',
      [
        ['Tag', 'Measured sensitivity (mV/µm)'],
        ['comma', '7,5'],
        ['either', '1,234'],
        ['neither', '7,8,7'],
      ],
    ],
    [
      'Monitor',
      [
        ['Tag', 'Configured sensitivity (mV/µm)', 'Alert (µm)', 'Danger (µm)'],
        ['comma', '7,87', 76, 127],
        ['either', 7.87, 76, 127],
        ['neither', 7.87, 76, 127],
      ],
    ],
  ),
  channels: [
    {
      tag: 'either',
      verdict: 'incomplete',
      sensitivity: { measured: null, configured: 7.87 },
      findings: ['value-not-a-number @ Channels!B3'],
    },
    { tag: 'neither', verdict: 'incomplete', findings: ['value-not-a-number @ Channels!B4'] },
    {
      tag: 'comma',
      verdict: 'within',
      is: { unit: 'µm' },
      thresholds: { alert: {}, danger: { effective: (127 * 7.87) / 7.5 } },
      findings: ['number-written-as-text @ Channels!B2', 'number-written-as-text @ Monitor!B2'],
    },
  ],
};
