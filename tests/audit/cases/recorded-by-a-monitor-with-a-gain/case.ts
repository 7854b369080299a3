import { DateCell } from '../../../../src/cells/cell.ts';
import { book } from '../../book.ts';
import type { GoldenCase } from '../../golden.ts';

/** Seconds after 10:00 on 2025-06-01 as a spreadsheet keeps them. */
const at = (seconds: number) => new DateCell(Date.UTC(2025, 5, 1, 10, 0, seconds) / 86_400_000);

export const golden: GoldenCase = {
  because:
    'By hand. A monitor that shows 0.8 of what is injected shows a real 5 mil as 5·0.8 = 4, though the chain is right: danger 5, delay 1 s, ' +
    'on readings that rise to 10 in 10 s acts at 6 s and should have at 5. A loop of 20 mm/s with 4.2 and 20.2 mA for 4 and 20 shows a ' +
    'real 8 as 8.25: it should act at 9.25 s, and acts at 9. On a run-up from 0 to 10 mil at 1000 to 2000 r/min, real, the gain has ' +
    'the danger act at a shown 5, 6.25 real, 1625 instead of 1500 r/min; at the running speed of 1200 r/min, by a record of 200 there, ' +
    'at 5·200/(0.8·200) = 6.25. Zones at 1200 r/min: 4800/√1200 = 138.6 µm lies between 5 and 6.25 mil.',
  book: book(
    [
      'Channels',
      [
        [
          ...['Tag', 'Kind', 'Measured sensitivity', 'Unit', 'Speed (r/min)'],
          ...['Loop current at 0 % (mA)', 'Loop current at 100 % (mA)'],
        ],
        ['G', 'radial', 200, 'mV/mil', 1200, null, null],
        ['L', 'loop', 0.8, 'mA/(mm/s)', null, 4.2, 20.2],
      ],
    ],
    [
      'Monitor',
      [
        [
          ...['Tag', 'Configured sensitivity', 'Sensitivity unit', 'Alert', 'Danger', 'Setpoint unit'],
          ...['Monitor gain', 'Alert delay (s)', 'Danger delay (s)', 'Full scale'],
        ],
        ['G', 200, 'mV/mil', 4, 5, 'mil', 0.8, 1, 1, 20],
        ['L', 0.8, 'mA/(mm/s)', 7, 8, 'mm/s', null, 1, 1, 20],
      ],
    ],
    [
      'Trend',
      [
        ['Time (UTC)', 'G (mil)', 'L (mm/s)'],
        [at(0), 0, 0],
        [at(10), 10, 10],
        [at(20), 10, 10],
      ],
    ],
    [
      'Against speed',
      [
        ['Tag', 'Speed (r/min)', 'Sensitivity (mV/mil)'],
        ['G', 1000, 200],
        ['G', 2000, 200],
      ],
    ],
    [
      'Run-up',
      [
        ['Tag', 'Speed (r/min)', 'Real amplitude (mil)'],
        ['G', 1000, 0],
        ['G', 2000, 10],
      ],
    ],
  ),
  channels: [
    {
      tag: 'G',
      verdict: 'late',
      findings: [
        'alert-late @ Monitor!D2',
        'danger-late @ Monitor!E2',
        'monitor-gain-off @ Monitor!G2',
        'danger-in-worse-zone @ Monitor!E2',
        'alert-replay-acted-late @ Monitor!D2',
        'danger-replay-acted-late @ Monitor!E2',
        'alert-run-up-late @ Monitor!D2',
        'danger-run-up-late @ Monitor!E2',
      ],
    },
    {
      tag: 'L',
      verdict: 'within',
      findings: ['alert-replay-acted-early @ Monitor!D3', 'danger-replay-acted-early @ Monitor!E3'],
    },
  ],
  replay: {
    G: { danger: { outcome: 'late', shouldActAt: 4, late: 1 } },
    L: { danger: { outcome: 'early', shouldActAt: 8.25, late: -0.25 } },
  },
  runUps: { G: { danger: { outcome: 'late', acts: 1625, should: 1500, realAtTrip: 6.25 } } },
};
