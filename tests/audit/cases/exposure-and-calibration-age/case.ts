import type { GoldenCase } from '../../golden.ts';
import { DateCell } from '../../../../src/cells/cell.ts';
import { book } from '../../book.ts';

const day = (iso: string) => new DateCell(Date.parse(`${iso}T00:00:00Z`) / 86_400_000);

export const golden: GoldenCase = {
  because:
    'By the calendar: 2025-01-01 to 2025-11-27 are 304 + 26 = 330 days; on 2026-01-01, 2024-01-02 lies 366 + 364 = 730 days back, which is the policy interval and so not overdue, 2024-01-01 is 731.',
  book: book(
    [
      'Channels',
      [
        ['Tag', 'Measured sensitivity (mV/mil)', 'Last good on', 'Calibrated on'],
        ['exposed', 160, day('2025-01-01'), '27 Nov 2025'],
        ['order', 160, '2025-11-28', '2025-11-27'],
        ['good', 200, '2025-01-01', '2025-11-27'],
        ['on time', 200, null, '2024-01-02'],
        ['overdue', 200, null, '2024-01-01'],
        ['future', 200, null, '2026-01-02'],
        ['two days', 200, null, '03/04/2025'],
        ['no day', 200, null, '2025-02-30'],
      ],
    ],
    [
      'Monitor',
      [
        ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)'],
        ...['exposed', 'order', 'good', 'on time', 'overdue', 'future', 'two days', 'no day'].map((tag) => [
          tag,
          200,
          3,
          5,
        ]),
      ],
    ],
  ),
  channels: [
    {
      tag: 'exposed',
      verdict: 'late',
      findings: ['alert-late @ Monitor!C2', 'danger-late @ Monitor!D2', 'period-of-exposure @ Channels!C2'],
    },
    {
      tag: 'order',
      verdict: 'late',
      findings: ['alert-late @ Monitor!C3', 'danger-late @ Monitor!D3', 'dates-out-of-order @ Channels!C3'],
    },
    { tag: 'good', verdict: 'within' },
    { tag: 'on time', verdict: 'within' },
    { tag: 'overdue', verdict: 'within', findings: ['calibration-overdue @ Channels!D6'] },
    { tag: 'future', verdict: 'within', findings: ['calibration-in-the-future @ Channels!D7'] },
    { tag: 'two days', verdict: 'within', findings: ['value-not-a-date @ Channels!D8'] },
    { tag: 'no day', verdict: 'within', findings: ['value-not-a-date @ Channels!D9'] },
  ],
  says: [/330 days, from 2025-01-01 to 2025-11-27/, /731 days old/],
};
