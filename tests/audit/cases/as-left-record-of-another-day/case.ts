import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';
import { gaps, rowsOf, straight } from '../../recordSheets.ts';

const tags = ['old', 'same day', 'to come', 'undated', 'by records'];
const late = (row: number) => [`alert-late @ Monitor!C${row}`, `danger-late @ Monitor!D${row}`];
const cured = (row: number) => ['alert', 'danger'].map((name) => `${name}-as-left-cured @ Channels!D${row}`);
const start = (row: number) => `exposure-start-unknown @ Channels!E${row}`;
const points = straight(200, gaps(15, 90, 15));

export const golden: GoldenCase = {
  because:
    'By reason: how a chain was left in 2024 says nothing of a fault that was found in 2025; a record of the same day, or without a day, may. A day after the audit of 2026-01-01 is a slip. Without a day in the list that of the record as found counts: 160 found on 2025-06-01, left on 2025-05-31. Kc 200 mV/mil, so 160 is late (25 %) and 200 within.',
  book: book(
    [
      'Channels',
      [
        [
          'Tag',
          'Measured sensitivity (mV/mil)',
          'Calibrated on',
          'As-left sensitivity (mV/mil)',
          'Last good on',
        ],
        ['old', 160, '2025-11-01', null],
        ['same day', 160, '2025-11-01', null],
        ['to come', 160, '2025-11-01', null],
        ['undated', 160, '2025-11-01', null],
        ['by records', null, null, null],
      ],
    ],
    [
      'Monitor',
      [
        ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)'],
        ...tags.map((tag) => [tag, 200, 3, 5]),
      ],
    ],
    [
      'Records',
      [
        ['Tag', 'Series', 'Date', 'Gap (mil)', 'Output (V)'],
        ...rowsOf(['old', 'as left', '2024-10-01'], points),
        ...rowsOf(['same day', 'as left', '2025-11-01'], points),
        ...rowsOf(['to come', 'as left', '2026-01-02'], points),
        ...rowsOf(['undated', 'as left', null], points),
        ...rowsOf(['by records', 'as found', '2025-06-01'], straight(160, gaps(15, 90, 15))),
        ...rowsOf(['by records', 'as left', '2025-05-31'], points),
      ],
    ],
  ),
  channels: [
    {
      tag: 'old',
      verdict: 'late',
      findings: [...late(2), start(2), 'record-as-left-of-another-day @ Channels!D2'],
      asFound: null,
    },
    {
      tag: 'to come',
      verdict: 'late',
      findings: [...late(4), start(4), 'record-as-left-of-another-day @ Channels!D4'],
      asFound: null,
    },
    {
      tag: 'by records',
      verdict: 'late',
      findings: [
        ...late(6),
        'sensitivity-from-record @ Channels!B6',
        'record-without-gap-voltage @ Records!D26',
        'several-records @ Records!D26',
        'record-as-left-of-another-day @ Channels!D6',
      ],
      asFound: null,
    },
    {
      tag: 'same day',
      verdict: 'within',
      findings: [
        start(3),
        ...cured(3),
        'as-left-sensitivity-from-record @ Channels!D3',
        'record-without-gap-voltage @ Records!D8',
      ],
      sensitivity: { measured: 200, from: 'calibration record' },
      asFound: { verdict: 'late' },
    },
    {
      tag: 'undated',
      verdict: 'within',
      findings: [
        start(5),
        ...cured(5),
        'as-left-sensitivity-from-record @ Channels!D5',
        'record-without-gap-voltage @ Records!D20',
      ],
      asFound: { verdict: 'late' },
    },
  ],
  says: [
    /row 2 of sheet 'Records' is of 2024-10-01, which lies before what was found on 2025-11-01/,
    /is of 2026-01-02, which lies after the day of this audit, 2026-01-01/,
    /names no day: make sure that it was taken after what was found/,
  ],
};
