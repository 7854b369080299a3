import type { Exposure } from '../../../../src/audit/model/report.ts';
import type { GoldenCase } from '../../golden.ts';
import { DateCell } from '../../../../src/cells/cell.ts';
import { book } from '../../book.ts';

const day = (iso: string) => new DateCell(Date.parse(`${iso}T00:00:00Z`) / 86_400_000);

/** The same for both thresholds of a channel. */
const exposed = (period: Omit<Exposure, 'name' | 'multiplier'>): Exposure[] =>
  (['alert', 'danger'] as const).map((name) => ({ name, multiplier: 1, ...period }));

export const golden: GoldenCase = {
  because:
    'By the calendar: 2025-01-01 to 2025-11-27 are 304 + 26 = 330 days; on 2026-01-01, 2024-01-02 lies 366 + 364 = 730 days back, which is the policy interval and so not overdue, 2024-01-01 is 731. Without a last good day, or with one that lies after the calibration, the start can not be told, nor with one on the very day of the fault; with a calibration that has not come yet, the end can not. As left 200 is within, 170 late (17.6 %), and 190 ± 3 % straddles 0.95 of 200: the verdicts are of now, the exposure of what was found.',
  book: book(
    [
      'Channels',
      [
        [
          'Tag',
          'Measured sensitivity (mV/mil)',
          'Last good on',
          'Calibrated on',
          'As-left sensitivity (mV/mil)',
          'As-left uncertainty (%)',
        ],
        ['exposed', 160, day('2025-01-01'), '27 Nov 2025', 170],
        ['no start', 160, null, '2025-11-27'],
        ['no end', 160, '2025-01-01', '2026-01-02', 200],
        ['order', 160, '2025-11-28', '2025-11-27'],
        ['good', 200, '2025-01-01', '2025-11-27'],
        ['on time', 200, null, '2024-01-02'],
        ['overdue', 200, null, '2024-01-01'],
        ['future', 200, null, '2026-01-02'],
        ['two days', 200, null, '03/04/2025'],
        ['no day', 200, null, '2025-02-30'],
        ['one day', 160, '2025-11-27', '2025-11-27'],
        ['ended', 160, '2025-01-01', '2025-11-27', 200],
        ['unsure', 160, '2025-01-01', '2025-11-27', 190, 3],
      ],
    ],
    [
      'Monitor',
      [
        ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)'],
        ...[
          'exposed',
          'no start',
          'no end',
          'order',
          'good',
          'on time',
          'overdue',
          'future',
          'two days',
          'no day',
          'one day',
          'ended',
          'unsure',
        ].map((tag) => [tag, 200, 3, 5]),
      ],
    ],
  ),
  channels: [
    {
      tag: 'no start',
      verdict: 'late',
      findings: [
        'alert-late @ Monitor!C3',
        'danger-late @ Monitor!D3',
        'exposure-start-unknown @ Channels!C3',
      ],
      exposure: exposed({ from: null, to: '2025-11-27', days: null, goesOn: null }),
    },
    {
      tag: 'order',
      verdict: 'late',
      findings: ['alert-late @ Monitor!C5', 'danger-late @ Monitor!D5', 'dates-out-of-order @ Channels!C5'],
      exposure: exposed({ from: null, to: '2025-11-27', days: null, goesOn: null }),
    },
    {
      tag: 'one day',
      verdict: 'late',
      findings: [
        'alert-late @ Monitor!C12',
        'danger-late @ Monitor!D12',
        'exposure-start-unknown @ Channels!C12',
      ],
      exposure: exposed({ from: null, to: '2025-11-27', days: null, goesOn: null }),
    },
    {
      tag: 'exposed',
      verdict: 'late',
      findings: ['alert-late @ Monitor!C2', 'danger-late @ Monitor!D2', 'period-of-exposure @ Channels!C2'],
      exposure: exposed({ from: '2025-01-01', to: '2025-11-27', days: 330, goesOn: true }),
    },
    {
      tag: 'unsure',
      verdict: 'undetermined',
      findings: [
        'period-of-exposure @ Channels!C14',
        'alert-undetermined @ Monitor!C14',
        'danger-undetermined @ Monitor!D14',
      ],
    },
    {
      tag: 'no end',
      verdict: 'within',
      findings: [
        'calibration-in-the-future @ Channels!D4',
        'alert-as-left-cured @ Channels!E4',
        'danger-as-left-cured @ Channels!E4',
      ],
      exposure: exposed({ from: '2025-01-01', to: null, days: null, goesOn: false }),
    },
    { tag: 'good', verdict: 'within' },
    { tag: 'on time', verdict: 'within' },
    { tag: 'overdue', verdict: 'within', findings: ['calibration-overdue @ Channels!D8'] },
    { tag: 'future', verdict: 'within', findings: ['calibration-in-the-future @ Channels!D9'] },
    { tag: 'two days', verdict: 'within', findings: ['value-not-a-date @ Channels!D10'] },
    { tag: 'no day', verdict: 'within', findings: ['value-not-a-date @ Channels!D11'] },
    {
      tag: 'ended',
      verdict: 'within',
      findings: [
        'period-of-exposure @ Channels!C13',
        'alert-as-left-cured @ Channels!E13',
        'danger-as-left-cured @ Channels!E13',
      ],
      exposure: exposed({ from: '2025-01-01', to: '2025-11-27', days: 330, goesOn: false }),
    },
  ],
  says: [
    /330 days, from 2025-01-01 to 2025-11-27, the alert and danger may have been late or unable to act\. Still so as left: alert and danger\.$/,
    /found on 2025-11-27\. It goes on until the chain is corrected and measured again\. Enter the day on which it was last good before that\.$/,
    /danger may have been late or unable to act\. The correction ended it\.$/,
    /is not known: the day given as last good is the very day on which it was found\. It was found on 2025-11-27/,
    /Not known as left: alert and danger\.$/,
    /731 days old/,
    /\(cell C5\) lies after calibrated on 2025-11-27 \(cell D5\)/,
  ],
};
