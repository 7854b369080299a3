import type { GoldenCase } from '../../golden.ts';
import { book, oneChannel } from '../../book.ts';

const { sheets } = oneChannel({
  measured: 160,
  alert: 2,
  danger: 4,
  settings: { 'Alert delay (s)': 0, 'Danger delay (s)': 3 },
});

export const golden: GoldenCase = {
  because:
    'By hand: readings 1, 3, 5, 5 at 0, 10, 20, 30 s, joined straight. Danger 4 is shown at 15 s and acts 3 s later, at 18 s. A real 4 ' +
    'shows as 4·160/200 = 3.2, at 11 s, so it should have acted at 14 s: 4 s late. Alert 2 is shown at 5 s; a real 2 shows as 1.6, at ' +
    '3 s: 2 s late. The rows stand out of order, and of two readings at one instant the larger counts.',
  book: book(...sheets, [
    'Trend',
    [
      ['Recorded by the monitor'],
      [],
      ['Time (UTC)', 'V-1 (mil)'],
      ['2025-06-01 10:00:20', 5],
      ['2025-06-01 10:00:00', 1],
      ['2025-06-01 10:00:30', 5],
      ['2025-06-01 10:00:10', 3],
      ['2025-06-01T12:00:10+02:00', 2.8],
    ],
  ]),
  channels: [
    {
      tag: 'V-1',
      verdict: 'late',
      findings: [
        'danger-late @ Monitor!D2',
        'alert-late @ Monitor!C2',
        'danger-replay-acted-late @ Monitor!D2',
        'alert-replay-acted-late @ Monitor!C2',
      ],
    },
  ],
  replay: {
    'V-1': {
      danger: {
        outcome: 'late',
        late: 4,
        shouldActAt: 3.2,
        acted: {
          proven: { seconds: 18, time: '2025-06-01T10:00:18.000Z' },
          earliest: { seconds: 18, time: '2025-06-01T10:00:18.000Z' },
        },
        should: {
          proven: { seconds: 14, time: '2025-06-01T10:00:14.000Z' },
          earliest: { seconds: 14, time: '2025-06-01T10:00:14.000Z' },
        },
      },
      alert: { outcome: 'late', late: 2, shouldActAt: 1.6 },
    },
  },
  attention: [
    'critical late V-1 danger',
    'critical acted-late V-1 danger',
    'warning late V-1 alert',
    'warning acted-late V-1 alert',
  ],
  headlines: [/^V-1 danger acted 4 s late on 2025-06-01: at 10:00:18.0 instead of 10:00:14.0;/],
};
