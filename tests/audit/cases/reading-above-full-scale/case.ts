import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

export const golden: GoldenCase = {
  because:
    'A panel shows no more than its full scale (common practice, no source): 48 on a scale to 15 mil, or −32 on one of 30 mil either way, is a slip of the entry. 15 mil, the end of the scale, can be shown.',
  book: book(
    [
      'Channels',
      [
        [
          'Tag',
          'Kind',
          'Measured sensitivity (mV/mil)',
          'Measured zero voltage (V)',
          'Positive direction',
          'Present reading (mil)',
        ],
        ['above', null, 200, null, null, 48],
        ['at the end', null, 200, null, null, 15],
        ['position', 'axial', 200, -10, 'toward', -32],
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
          'Full scale (mil)',
          'Configured zero voltage (V)',
        ],
        ['above', 200, 5, 7.5, 15, null],
        ['at the end', 200, 5, 7.5, 15, null],
        ['position', 200, 15, 20, 30, -10],
      ],
    ],
  ),
  channels: [
    {
      tag: 'above',
      verdict: 'within',
      findings: ['reading-above-full-scale @ Channels!F2'],
    },
    { tag: 'at the end', verdict: 'within', findings: [] },
    { tag: 'position', verdict: 'within', findings: ['reading-above-full-scale @ Channels!F4'] },
  ],
  says: [/48 mil is above the full scale of 15 mil/],
};
