import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

export const golden: GoldenCase = {
  because:
    'By hand with Kc 200 mV/mil, tolerance 5 %: 200, 198 and 196 at 0, 365 and 730 days lie on a line of −2 in 365 days, which reaches 190 after 1825 days, on 2025-12-31 (2024 is a leap year): the day before the audit, unseen by the 196 of 2023. 170 of 2025 is later than the 200 of 2024 by which Newer was judged, and 15 % low. Same repeats its value later, Older was measured since its history, Left was left at another value than found on the later day.',
  book: book(
    [
      'Channels',
      [
        ['Tag', 'Measured sensitivity (mV/mil)', 'Calibrated on'],
        ['Unseen', 196, '2023-01-01'],
        ['Newer', 200, '2024-06-01'],
        ['Same', 200, '2024-06-01'],
        ['Older', 200, '2024-06-01'],
        ['Left', 200, '2024-06-01'],
      ],
    ],
    [
      'Monitor',
      [
        ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)'],
        ...['Unseen', 'Newer', 'Same', 'Older', 'Left'].map((tag) => [tag, 200, 3, 5]),
      ],
    ],
    [
      'History',
      [
        ['Tag', 'Date', 'Sensitivity (mV/mil)', 'As-left sensitivity (mV/mil)'],
        ['Unseen', '2021-01-01', 200],
        ['Unseen', '2022-01-01', 198],
        ['Newer', '2025-06-01', 170],
        ['Same', '2025-06-01', 200],
        ['Older', '2023-06-01', 170],
        ['Left', '2025-06-01', 170, 200],
      ],
    ],
  ),
  channels: [
    {
      tag: 'Unseen',
      verdict: 'within',
      findings: ['calibration-overdue @ Channels!C2', 'drift-leaves-tolerance @ Channels!B2'],
      drift: {
        perYear: (-2 * 365.25) / 365,
        leaves: {
          state: 'outside',
          limit: 190,
          days: 1825,
          on: '2025-12-31',
          earliest: '2025-12-31',
          latest: '2025-12-31',
        },
      },
    },
    {
      tag: 'Newer',
      verdict: 'within',
      findings: ['history-has-newer-reading @ History!C4', 'drift-not-told @ Channels!B3'],
    },
    { tag: 'Same', verdict: 'within', findings: ['drift-not-told @ Channels!B4'] },
    { tag: 'Older', verdict: 'within', findings: ['drift-not-told @ Channels!B5'] },
    { tag: 'Left', verdict: 'within', findings: ['drift-not-told @ Channels!B6'] },
  ],
  says: [
    /it left the tolerance of ±5 % at 190 mV\/mil on 2025-12-31 .*The last reading was still within it: measure the chain now/,
    /170 mV\/mil on 2025-06-01, −15 % off the configured sensitivity\. The channel was judged by the 200 mV\/mil of 2024-06-01/,
  ],
};
