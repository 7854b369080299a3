import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

export const golden: GoldenCase = {
  because:
    'By hand: on 2020-01-01 the chain was found at 180 and left at 200, so the readings count from the 200 on: 200, 199 and ' +
    '198 at 0, 366 and 732 days (2020 is a leap year) lie on one line of −1 in 366 days without scatter, which reaches ' +
    '190.095 after 9.905·366 = 3625.23 days, on 2029-12-04. Left as found on 2021-01-01 is no correction. Few was corrected on its last day, by ' +
    'the channel list itself; Once has two readings in all. Of those within the one farthest off, 198 for 200.1, comes first.',
  book: book(
    [
      'Channels',
      [
        ['Tag', 'Measured sensitivity (mV/mil)', 'Calibrated on', 'As-left sensitivity (mV/mil)'],
        ['Line', 198, '2022-01-02', null],
        ['Few', 192, '2022-01-02', 200],
        ['Once', 200, '2022-01-02', null],
      ],
    ],
    [
      'Monitor',
      [
        ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)'],
        ['Line', 200.1, 3, 5],
        ['Few', 200, 3, 5],
        ['Once', 200, 3, 5],
      ],
    ],
    [
      'History',
      [
        ['Tag', 'Date', 'As found / as left', 'Sensitivity (mV/mil)'],
        ['Line', '2018-06-01', 'As found', 190],
        ['Line', '2019-06-01', 'As found', 185],
        ['Line', '2020-01-01', 'As left', 200],
        ['Line', '2020-01-01', 'As found', 180],
        ['Line', '2021-01-01', 'As found', 199],
        ['Line', '2021-01-01', 'As left', 199],
        ['Few', '2019-01-02', null, 200],
        ['Few', '2020-01-02', null, 196],
        ['Few', '2021-01-02', null, 194],
        ['Once', '2021-01-02', 'as left', 201],
      ],
    ],
  ),
  policy: { calibrationIntervalDays: 3000 },
  channels: [
    {
      tag: 'Line',
      verdict: 'within',
      findings: ['drift-leaves-tolerance @ Channels!B2'],
      drift: {
        startsAnew: { date: '2020-01-01', found: 180, left: 200 },
        perYear: -365.25 / 366,
        correlation: -1,
        leaves: {
          state: 'inside',
          limit: 200.1 * 0.95,
          days: 9.905 * 366,
          on: '2029-12-04',
          earliest: '2029-12-04',
          latest: '2029-12-05',
        },
      },
    },
    { tag: 'Few', verdict: 'within', findings: ['drift-not-told @ Channels!B3'], drift: null },
    { tag: 'Once', verdict: 'within', findings: ['drift-not-told @ Channels!B4'], drift: null },
  ],
  says: [
    /on 2020-01-01 the chain was corrected, from 180 mV\/mil to 200 mV\/mil/,
    /there is 1 reading on 1 day since the correction of 2022-01-02/,
    /there are 2 readings on 2 days\./,
  ],
};
