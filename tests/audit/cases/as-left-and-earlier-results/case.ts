import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

export const golden: GoldenCase = {
  because:
    'The verdict is on what was found, not on what was left behind: 160, not 200, which stands beside it: 5·200/200 = 5. A sheet that an earlier audit wrote is no input, however its headers read.',
  book: book(
    [
      'Channels',
      [
        ['Tag', 'Measured sensitivity (mV/mil)', 'As-left sensitivity (mV/mil)'],
        ['A', 160, 200],
      ],
    ],
    [
      'Monitor',
      [
        ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)'],
        ['A', 200, 3, 5],
      ],
    ],
    ['Result', [['Tripdrift audit of 2025'], ['Tag', 'Measured sensitivity (mV/mil)'], ['A', 200]]],
  ),
  channels: [
    {
      tag: 'A',
      verdict: 'late',
      findings: [
        'alert-late @ Monitor!C2',
        'danger-late @ Monitor!D2',
        'alert-as-left-cured @ Channels!C2',
        'danger-as-left-cured @ Channels!C2',
      ],
      asLeft: { verdict: 'within', sensitivityFrom: 'channel list', gapVoltage: null, linearReach: null },
      asLeftSensitivity: { configured: 200, measured: 200, unit: 'mV/mil', error: 0, uncertainty: null },
      asLeftThresholds: {
        alert: { effective: 3, verdict: 'within', change: 'cured' },
        danger: { effective: 5, verdict: 'within', change: 'cured' },
      },
    },
  ],
  problems: ['earlier-result @ Result!A1'],
  summary: { late: 1, within: 0, asLeft: { judged: 1, cured: 1, stillLate: 0, newlyLate: 0 } },
};
