import { book } from '../../book.ts';
import type { GoldenCase } from '../../golden.ts';

export const golden: GoldenCase = {
  because:
    'A header further down in another unit is another list: read in the first one, 6.3 mV/µm would be 6.3 mV/mil, 25.4 times ' +
    'wrong. Each list counts in its own unit. By hand: 5 mil × 200/160 = 6.25 mil, and 6.3 × 25.4 = 160.02 mV/mil, 5 × 200/160.02 = 6.249219 mil.',
  standard: false,
  book: book(
    [
      'Channels',
      [
        ['Tag', 'Measured sensitivity (mV/mil)'],
        ['A-1', 160],
        [],
        ['Tag', 'Measured sensitivity (mV/µm)'],
        ['B-1', 6.3],
      ],
    ],
    [
      'Monitor',
      [
        ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)'],
        ['A-1', 200, 3, 5],
        ['B-1', 200, 3, 5],
      ],
    ],
  ),
  channels: [
    {
      tag: 'A-1',
      verdict: 'late',
      thresholds: { alert: { verdict: 'late' }, danger: { effective: 6.25, verdict: 'late' } },
      is: { source: { channels: { sheet: 'Channels', row: 2 }, settings: { sheet: 'Monitor', row: 2 } } },
      findings: ['alert-late @ Monitor!C2', 'danger-late @ Monitor!D2'],
    },
    {
      tag: 'B-1',
      verdict: 'late',
      thresholds: { alert: { verdict: 'late' }, danger: { effective: 1000 / 160.02, verdict: 'late' } },
      is: { source: { channels: { sheet: 'Channels', row: 5 }, settings: { sheet: 'Monitor', row: 3 } } },
      findings: ['alert-late @ Monitor!C3', 'danger-late @ Monitor!D3'],
    },
  ],
};
