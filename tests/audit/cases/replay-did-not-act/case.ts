import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

export const golden: GoldenCase = {
  because:
    'By hand. V-1: readings 1, 3.5, 3.6, 2 at 0, 10, 20, 40 s, danger 4, delay 3 s: 4 is never shown. A real 4 shows as 3.2, reached at ' +
    '10·2.2/2.5 = 8.8 s, so danger should have acted at 11.8 s. V-2 over-reads: 4 at 7.5 s of a rise by 0.2 in a second from 2.5, a real ' +
    '4 shows as 5, at 12.5 s: 5 s early. V-3: 3.2 is shown at 0.2 s of a rise from 3 to 5 in 2 s and held to 3.2 s, so it should have acted then; 4 ' +
    'is held from 1 to 2.6 s alone, less than 3 s, but from 4 s to 9 s a bad reading leaves it open: possible from 7 s, not proven. V-4 is measured again without a day.',
  book: book(
    [
      'Channels',
      [
        ['Tag', 'Kind', 'Measured sensitivity (mV/mil)', 'As-left sensitivity (mV/mil)'],
        ['V-1', 'radial', 160, null],
        ['V-2', 'radial', 250, null],
        ['V-3', 'radial', 160, null],
        ['V-4', 'radial', 160, 200],
      ],
    ],
    [
      'Monitor',
      [
        ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)', 'Danger delay (s)'],
        ['V-1', 200, 3.9, 4, 3],
        ['V-2', 200, 3.9, 4, 0],
        ['V-3', 200, 3.9, 4, 3],
        ['V-4', 200, 3.9, 4, 3],
      ],
    ],
    [
      'Export',
      [
        ['Timestamp (+00:00)', 'Tag', 'Value', 'Units', 'Quality'],
        ['2025-06-01 10:00:00', 'V-1', 1, 'mil', 'Good'],
        ['2025-06-01 10:00:10', 'V-1', 3.5, 'mil', 'Good'],
        ['2025-06-01 10:00:20', 'V-1', 3.6, 'mil', 'Good'],
        ['2025-06-01 10:00:40', 'V-1', 2, 'mil', 'Good'],
        ['2025-06-01 10:00:00', 'v-2', 63.5, 'um', 'Good'],
        ['2025-06-01 10:00:20', 'v-2', 165.1, 'um', 'Good'],
        ['2025-06-01 10:00:00', 'V-3', 3, 'mil', 'Good'],
        ['2025-06-01 10:00:02', 'V-3', 5, 'mil', 'Good'],
        ['2025-06-01 10:00:03', 'V-3', 3.3, 'mil', 'Good'],
        ['2025-06-01 10:00:04', 'V-3', 3.3, 'mil', 'Good'],
        ['2025-06-01 10:00:05', 'V-3', 9, 'mil', 'Bad'],
        ['2025-06-01 10:00:09', 'V-3', 3.3, 'mil', 'Good'],
        ['2025-06-01 10:00:10', 'V-3', 3.3, 'mil', 'Good'],
        ['2025-06-01 10:00:00', 'V-4', 3, 'mil', 'Good'],
        ['2025-06-01 10:00:00', 'V-9', 3, 'mil', 'Good'],
      ],
    ],
  ),
  policy: { replay: { maxGap: 60 } },
  channels: [
    {
      tag: 'V-1',
      verdict: 'late',
      findings: [
        'alert-late @ Monitor!C2',
        'danger-late @ Monitor!D2',
        'danger-replay-did-not-act @ Monitor!D2',
        'alert-replay-did-not-act @ Monitor!C2',
      ],
    },
    {
      tag: 'V-3',
      verdict: 'late',
      findings: [
        'alert-late @ Monitor!C4',
        'danger-late @ Monitor!D4',
        'danger-replay-not-proven @ Monitor!D4',
        'alert-replay-acted-late @ Monitor!C4',
      ],
    },
    {
      tag: 'V-2',
      verdict: 'early',
      findings: [
        'alert-early @ Monitor!C3',
        'danger-early @ Monitor!D3',
        'danger-replay-acted-early @ Monitor!D3',
        'alert-replay-acted-early @ Monitor!C3',
        'linear-range-short @ Channels!C3',
      ],
    },
    {
      tag: 'V-4',
      verdict: 'within',
      findings: ['alert-as-left-cured @ Channels!D5', 'danger-as-left-cured @ Channels!D5'],
    },
  ],
  problems: [
    'not-replayed @ Export!B1',
    'trend-readings-unknown @ Export!E12',
    'trend-columns-not-read @ Export!B1',
  ],
  replay: {
    'V-1': {
      danger: {
        outcome: 'did not act',
        late: null,
        acted: { proven: null, earliest: null },
        should: {
          proven: { seconds: 11.8, time: '2025-06-01T10:00:11.800Z' },
          earliest: { seconds: 11.8, time: '2025-06-01T10:00:11.800Z' },
        },
      },
    },
    'V-2': { danger: { outcome: 'early', late: -5, shouldActAt: 5 } },
    'V-3': {
      danger: {
        outcome: 'not known',
        late: null,
        acted: { proven: null, earliest: { seconds: 7, time: '2025-06-01T10:00:07.000Z' } },
        should: {
          proven: { seconds: 3.2, time: '2025-06-01T10:00:03.200Z' },
          earliest: { seconds: 3.2, time: '2025-06-01T10:00:03.200Z' },
        },
      },
    },
  },
  headlines: [
    /^V-1 danger did not act on 2025-06-01: it should have acted at 10:00:11;/,
    /^V-3 danger should have acted at 10:00:03 on 2025-06-01; the readings do not tell whether it did/,
  ],
};
