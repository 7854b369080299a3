import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

const delay = 3 / 86_400;

export const golden: GoldenCase = {
  because:
    'By hand, 160 for 200, danger 5 → 6.25 mil, shown 2 mil is real 2.5 mil. At 0.1 mil a day: (6.25 − 5)/0.1 = 12.5 days late, (6.25 − 2.5)/0.1 = 37.5 days and 3 s to go, 6.25 mil + 0.1·3/86400 at the trip. ' +
    'Doubling in 30 days: 30·log2(1.25) = 9.658 days late, 30·log2(2.5) = 39.66 days and 3 s to go. Both at once contradict each other.',
  book: book(
    [
      'Channels',
      [
        ['Tag', 'Measured sensitivity (mV/mil)', 'Present reading (mil)', 'Growth per day', 'Doubling time'],
        ['linear', 160, 2, 0.1, null],
        ['doubling', 160, 2, null, 30],
        ['both', 160, 2, 0.1, 30],
        ['neither', 160, null, null, null],
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
          'Alert delay',
          'Danger delay',
        ],
        ['linear', 200, 3, 5, 1, 3],
        ['doubling', 200, 3, 5, 1, 3],
        ['both', 200, 3, 5, 1, 3],
        ['neither', 200, 3, 5, 5, 10],
      ],
    ],
  ),
  channels: [
    {
      tag: 'linear',
      verdict: 'late',
      inputs: { growthPerDay: 0.1, doublingDays: null, alertDelay: 1, dangerDelay: 3 },
      thresholds: {
        alert: { daysLate: 7.5, daysToGo: 12.5 + delay / 3 },
        danger: { daysLate: 12.5, daysToGo: 37.5 + delay, levelAtTrip: 6.25 + 0.1 * delay, headroom: 3.75 },
      },
      findings: ['alert-late @ Monitor!C2', 'danger-late @ Monitor!D2'],
    },
    {
      tag: 'doubling',
      verdict: 'late',
      thresholds: {
        alert: { daysLate: 9.65784284662087 },
        danger: {
          daysLate: 9.65784284662087,
          daysToGo: 39.65784284662087 + delay,
          levelAtTrip: 6.25 * 2 ** (delay / 30),
        },
      },
      findings: ['alert-late @ Monitor!C3', 'danger-late @ Monitor!D3'],
    },
    {
      tag: 'both',
      verdict: 'late',
      thresholds: {
        alert: { daysLate: null },
        danger: { daysLate: null, daysToGo: null, levelAtTrip: null },
      },
      findings: ['alert-late @ Monitor!C4', 'danger-late @ Monitor!D4', 'growth-given-twice @ Channels!D4'],
    },
    {
      tag: 'neither',
      verdict: 'late',
      thresholds: { alert: { daysLate: null, headroom: null }, danger: { daysLate: null, headroom: null } },
      findings: [
        'alert-late @ Monitor!C5',
        'danger-late @ Monitor!D5',
        'alert-delay-long @ Monitor!E5',
        'danger-delay-long @ Monitor!F5',
      ],
    },
  ],
  problems: ['unit-assumed @ Channels!D1'],
};
