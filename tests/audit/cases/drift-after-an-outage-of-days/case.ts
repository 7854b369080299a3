import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

export const golden: GoldenCase = {
  because:
    'By hand: found at 180 on 2024-01-01 and left at 200 on the next day, the chain was corrected; 200, 199.5 and 199 at 0, 183 and 366 days lie on a line of −1 in 366 days, which reaches 190 after 3660 days, on 2034-01-09. Left only was never found at another value before it was left; Checked was left as it was found in 2022, so what was left in 2023 is not known to follow a correction.',
  book: book(
    [
      'Channels',
      [
        ['Tag', 'Measured sensitivity (mV/mil)', 'Calibrated on'],
        ['Days', 199, '2025-01-02'],
        ['Left only', 198, '2024-06-01'],
        ['Checked', 197, '2024-06-01'],
      ],
    ],
    [
      'Monitor',
      [
        ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)'],
        ...['Days', 'Left only', 'Checked'].map((tag) => [tag, 200, 3, 5]),
      ],
    ],
    [
      'History',
      [
        ['Tag', 'Date', 'Sensitivity (mV/mil)', 'As found / as left'],
        ['Days', '2022-01-01', 196, 'as found'],
        ['Days', '2023-01-01', 188, 'as found'],
        ['Days', '2024-01-01', 180, 'as found'],
        ['Days', '2024-01-02', 200, 'as left'],
        ['Days', '2024-07-03', 199.5, 'as found'],
        ['Left only', '2022-06-01', 200, 'as left'],
        ['Left only', '2023-06-01', 199, 'as left'],
        ['Checked', '2022-06-01', 199, 'as found'],
        ['Checked', '2022-06-01', 199, 'as left'],
        ['Checked', '2023-06-01', 198, 'as left'],
      ],
    ],
  ),
  channels: [
    {
      tag: 'Checked',
      verdict: 'within',
      findings: ['drift-of-sensitivity @ Channels!B4'],
      drift: { startsAnew: null },
    },
    {
      tag: 'Left only',
      verdict: 'within',
      findings: ['drift-of-sensitivity @ Channels!B3'],
      drift: { startsAnew: null },
    },
    {
      tag: 'Days',
      verdict: 'within',
      findings: ['drift-of-sensitivity @ Channels!B2'],
      drift: {
        startsAnew: { date: '2024-01-02', found: 180, left: 200 },
        perYear: -365.25 / 366,
        leaves: {
          state: 'inside',
          limit: 190,
          days: 3660,
          on: '2034-01-09',
          earliest: '2034-01-09',
          latest: '2034-01-09',
        },
      },
    },
  ],
};
