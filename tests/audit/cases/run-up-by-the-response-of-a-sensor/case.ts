import { book } from '../../book.ts';
import type { GoldenCase } from '../../golden.ts';

export const golden: GoldenCase = {
  because:
    'By hand. S, a sensor with its corner at 10 Hz and a damping of 0.5, measured at 1000 Hz: h = r²/√((1 − r²)² + r²). At 600 r/min, 10 ' +
    'Hz, r = 1 and h = 1; at 1000 Hz r² = 10⁴, h = 10⁴/√(9999² + 10⁴) = 1.00005. So its 100 mV/(in/s) are 99.995 at 600 r/min: within. At ' +
    '300 r/min r² = 1/4, h = 0.25/√(0.5625 + 0.25) = 0.27735, and 27.734 there. T runs at 1200 r/min; its record says 90 at 1000 and 80 at ' +
    '1400 r/min: 85 there, and 0.5 in/s act at 0.5·100/85 = 0.588. On its run-up of 0.4, 0.6 in/s at 1000, 1400 r/min it shows 0.36 and ' +
    '0.48, never 0.5; it should have acted at 1200.',
  book: book(
    [
      'Channels',
      [
        ['Tag', 'Kind', 'Measured sensitivity (mV/(in/s))', 'Speed (r/min)'],
        ['S', 'velocity', 100, 600],
        ['T', 'velocity', 100, 1200],
      ],
    ],
    [
      'Monitor',
      [
        ['Tag', 'Configured sensitivity (mV/(in/s))', 'Alert (in/s pk)', 'Danger (in/s pk)'],
        ['S', 100, 0.45, 0.5],
        ['T', 100, 0.45, 0.5],
      ],
    ],
    [
      'Sensors',
      [
        ['Tag', 'Corner frequency (Hz)', 'Damping', 'Measured at (Hz)'],
        ['S', 10, 0.5, 1000],
      ],
    ],
    [
      'Against speed',
      [
        ['Tag', 'Speed (r/min)', 'Sensitivity (mV/(in/s))'],
        ['T', 1000, 90],
        ['T', 1400, 80],
      ],
    ],
    [
      'Run-up',
      [
        ['Tag', 'Speed (r/min)', 'Real amplitude (in/s pk)'],
        ['T', 1000, 0.4],
        ['T', 1400, 0.6],
      ],
    ],
  ),
  channels: [
    { tag: 'S', verdict: 'within', findings: [] },
    {
      tag: 'T',
      verdict: 'within',
      findings: [
        'danger-run-up-no-action @ Monitor!D3',
        'alert-run-up-late @ Monitor!C3',
        'alert-late-at-running-speed @ Against speed!C2',
        'danger-late-at-running-speed @ Against speed!C2',
      ],
    },
  ],
  says: [
    /^At 1,200 r\/min the sensitivity is 85 mV\/\(in\/s\): danger, set 0\.5 in\/s, really acts at 0\.5882 in\/s there/,
  ],
  runUps: {
    T: { danger: { outcome: 'no action', acts: null, should: 1200, realAtTrip: null } },
  },
};
