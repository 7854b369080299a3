import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

export const golden: GoldenCase = {
  because:
    'Settings without a channel and rows without a tag stand in the problems, also where both tables share their header row.',
  book: book([
    'Both',
    [
      [
        'Tag',
        'Measured sensitivity (mV/mil)',
        null,
        'Tag',
        'Configured sensitivity (mV/mil)',
        'Alert (mil)',
        'Danger (mil)',
      ],
      ['A', 200, null, 'A', 200, 3, 5],
      [null, null, null, 'stray', 200, 3, 5],
      [null, null, null, null, 200, 3, 5],
    ],
  ]),
  channels: [{ tag: 'A', verdict: 'within' }],
  notRead: ['row a channel without a tag @ Both!D4'],
  problems: ['settings-without-channel @ Both!D3', 'row-without-tag @ Both!D4'],
};
