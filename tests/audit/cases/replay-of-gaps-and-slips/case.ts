import { DateCell } from '../../../../src/cells/cell.ts';
import type { GoldenCase } from '../../golden.ts';
import { book, oneChannel } from '../../book.ts';

const { sheets } = oneChannel({
  measured: 160,
  alert: 3.9,
  danger: 4,
  settings: { 'Alert delay (s)': 3, 'Danger delay (s)': 3 },
});
/** Seconds after 10:00 on 2025-06-01 as a spreadsheet keeps them. */
const at = (seconds: number) => new DateCell(Date.UTC(2025, 5, 1, 10, 0, seconds) / 86_400_000);

export const golden: GoldenCase = {
  because:
    'By hand: 3, 5, unknown, 5, 5, 5 at 0, 2, 3, 12, 14, 16 s, danger 4, delay 3 s: beyond from 1 s, unknown from 2 to 12 s, so that it ' +
    'is proven from 12 s on and acts at 15 s; had it stayed high, at 4 s. A real 4 shows as 3.2, at 0.2 s: proven at 15 s as well, and ' +
    'possible at 3.2 s. Slips in the rows are said with their first cells.',
  book: book(...sheets, [
    'Trend',
    [
      ['Time (UTC)', 'V-1', 'TI-7 (%)'],
      [at(0), 3, 80],
      [at(2), 5, 80],
      [at(3), 'no value', 80],
      [at(12), 5, 80],
      ['2025-06-31 10:00:13', 1, 80],
      ['yesterday', 1, 80],
      ['03/04/2025 10:00', 1, 80],
      [null, 1, 80],
      [at(14), 5, 80],
      [at(16), 5, 80],
    ],
  ]),
  policy: { replay: { maxGap: 5 } },
  channels: [
    { tag: 'V-1', verdict: 'late', findings: ['alert-late @ Monitor!C2', 'danger-late @ Monitor!D2'] },
  ],
  problems: [
    'trend-readings-unknown @ Trend!B4',
    'trend-rows-left-out @ Trend!A6',
    'trend-rows-left-out @ Trend!A7',
    'trend-rows-left-out @ Trend!A8',
    'trend-rows-left-out @ Trend!A9',
    'trend-columns-not-read @ Trend!C1',
    'trend-unit-assumed @ Trend!A1',
  ],
  says: [
    /^Row 6: '2025-06-31 10:00:13' is no day of the calendar/,
    /^Row 8: '03\/04\/2025 10:00' could be two different days; say in the policy/,
    /^A tag of the recorded readings \(TI-7\) matches no channel/,
  ],
  replay: {
    'V-1': {
      danger: {
        outcome: 'as set',
        late: 0,
        acted: {
          proven: { seconds: 15, time: '2025-06-01T10:00:15.000Z' },
          earliest: { seconds: 4, time: '2025-06-01T10:00:04.000Z' },
        },
        should: {
          proven: { seconds: 15, time: '2025-06-01T10:00:15.000Z' },
          earliest: { seconds: 3.2, time: '2025-06-01T10:00:03.200Z' },
        },
      },
    },
  },
};
