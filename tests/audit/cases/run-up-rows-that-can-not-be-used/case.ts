import { book, oneChannel } from '../../book.ts';
import type { GoldenCase } from '../../golden.ts';

const { sheets } = oneChannel({
  settings: { Multiplier: 2, 'Alert delay (s)': 3, 'Danger delay (s)': 3 },
});

export const golden: GoldenCase = {
  because:
    'By hand: what stands in any row of a run-up counts for it; a row that says otherwise than one above, or no number above 0, is left out ' +
    'and said. Left are 1, 1, 6, 6 mil at 1000, 1100, 1700, 1900 r/min, 100 r/min a second: 5 mil at 1100 + 600·4/5 = 1580, held for ' +
    '3 s until 1880; twice as much only below 1200. A sensor needs a corner and a damping, once.',
  book: book(
    ...sheets,
    [
      'Run-up',
      [
        ['Tag', 'rpm', 'Amplitude (mil)', 'Real or indicated', 'Multiplier below (r/min)', 'Rate'],
        ['V-1', 1000, 1, 'real', null, null],
        ['V-1', 1100, 1, null, null, 100],
        ['V-1', 1200, 30, 'indicated', null, null],
        ['V-1', 1300, 30, null, null, -100],
        ['V-1', 1400, 30, null, null, 'slow'],
        ['V-1', 1500, 30, null, null, 50],
        ['V-1', 1600, 30, null, 0, null],
        ['V-1', 1700, 6, 'Real', 1200, 100],
        ['V-1', 1800, 30, null, 1300, null],
        ['V-1', 1900, 6, null, 1200, null],
      ],
    ],
    [
      'Sensors',
      [
        ['Tag', 'Corner frequency (Hz)', 'Damping', 'Measured at (Hz)'],
        ['V-1', 'ten', 0.5, 80],
        ['V-1', 10, null, 80],
        ['V-1', 10, 0.5, -80],
        ['V-9', 10, 0.5, 80],
        ['V-9', 12, 0.5, 80],
      ],
    ],
  ),
  channels: [{ tag: 'V-1', verdict: 'within' }],
  problems: [
    'run-up-row-left-out @ Run-up!D4',
    'run-up-row-left-out @ Run-up!F5',
    'run-up-row-left-out @ Run-up!F6',
    'run-up-row-left-out @ Run-up!F7',
    'run-up-row-left-out @ Run-up!E8',
    'run-up-row-left-out @ Run-up!E10',
    'run-up-row-left-out @ Sensors!B2',
    'run-up-row-left-out @ Sensors!C3',
    'run-up-row-left-out @ Sensors!D4',
    'run-up-row-left-out @ Sensors!A6',
    'run-up-not-judged @ Sensors!A5',
  ],
  says: [
    /^'-100' is no run-up rate: enter a number above 0, .* this row was left out\.$/,
    /^'50' is not what an earlier row of this tag says/,
    /^The cell is no damping ratio: enter a number above 0; this row was left out\.$/,
  ],
  runUps: {
    'V-1': {
      'danger ×2': { outcome: 'as set', acts: 1880, should: 1880, multiplierSpeed: 1200, hold: 300 },
    },
  },
};
