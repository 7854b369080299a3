import { book } from '../../book.ts';
import type { GoldenCase } from '../../golden.ts';

export const golden: GoldenCase = {
  because:
    'Gap voltages of these probes are negative (common practice, no source). With the signs left out, +9 against +10 V, the shift ' +
    'of the zero would come out the wrong way round: 2 V/200 mV/mil = 10 mil apart. The row is refused until they are corrected.',
  book: book(
    [
      'Channels',
      [
        ['Tag', 'Kind', 'Measured sensitivity (mV/mil)', 'Measured zero voltage (V)', 'Positive direction'],
        ['Z-1', 'axial', 200, 9, 'toward'],
      ],
    ],
    [
      'Monitor',
      [
        [
          'Tag',
          'Configured sensitivity (mV/mil)',
          'Alert (mil)',
          'Danger (mil)',
          'Configured zero voltage (V)',
        ],
        ['Z-1', 200, 15, 20, 10],
      ],
    ],
  ),
  channels: [
    {
      tag: 'Z-1',
      verdict: 'incomplete',
      findings: ['zero-voltage-positive @ Channels!D2', 'zero-voltage-positive @ Monitor!E2'],
    },
  ],
};
