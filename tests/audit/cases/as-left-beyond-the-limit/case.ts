import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

export const golden: GoldenCase = {
  because:
    'By hand: Kc 200 mV/mil, danger 5 mil, limit 5.1 mil. As left 192 acts at 1000/192 = 5.2083 mil, 4.2 % late and so within 5 % (0.96 is above 0.95), but beyond 5.1 mil; found at 200 it acted at 5 mil, at 160 at 6.25 mil. As left 199 acts at 5.0251 mil. Within the tolerance is not within the limit: both that were left at 192 need action.',
  book: book(
    [
      'Channels',
      [
        ['Tag', 'Measured sensitivity (mV/mil)', 'Limit (mil)', 'As-left sensitivity (mV/mil)'],
        ['worse', 200, 5.1, 192],
        ['still', 160, 5.1, 192],
        ['right', 160, 5.1, 199],
      ],
    ],
    [
      'Monitor',
      [
        ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)'],
        ...['worse', 'still', 'right'].map((tag) => [tag, 200, 3, 5]),
      ],
    ],
  ),
  channels: [
    {
      tag: 'worse',
      verdict: 'within',
      thresholds: { alert: { beyondLimit: null }, danger: { effective: 1000 / 192, beyondLimit: 'yes' } },
      asFoundThresholds: { alert: {}, danger: { effective: 5, beyondLimit: 'no' } },
      findings: ['danger-beyond-limit @ Channels!C2'],
    },
    {
      tag: 'still',
      verdict: 'within',
      thresholds: { alert: {}, danger: { effective: 1000 / 192, beyondLimit: 'yes', change: 'corrected' } },
      asFoundThresholds: { alert: {}, danger: { effective: 6.25, beyondLimit: 'yes' } },
      findings: [
        'danger-beyond-limit @ Channels!C3',
        'alert-as-left-cured @ Channels!D3',
        'danger-as-left-cured @ Channels!D3',
      ],
    },
    {
      tag: 'right',
      verdict: 'within',
      thresholds: { alert: {}, danger: { effective: 1000 / 199, beyondLimit: 'no', change: 'corrected' } },
      findings: ['alert-as-left-cured @ Channels!D4', 'danger-as-left-cured @ Channels!D4'],
    },
  ],
  attention: ['critical beyond-limit worse danger', 'critical beyond-limit still danger'],
  says: [/5\.208 mil.* limit of 5\.1 mil/],
};
