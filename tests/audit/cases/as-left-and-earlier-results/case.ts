import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

export const golden: GoldenCase = {
  because:
    'The verdict is on what the chain is now, left at 200: 5·200/200 = 5 mil. That it was found at 160, where danger acted at 5·200/160 = 6.25 mil, is history beside it, and nothing needs action. A sheet that an earlier audit wrote is no input, however its headers read.',
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
      verdict: 'within',
      is: { state: 'as left' },
      findings: ['alert-as-left-cured @ Channels!C2', 'danger-as-left-cured @ Channels!C2'],
      sensitivity: {
        configured: 200,
        measured: 200,
        unit: 'mV/mil',
        error: 0,
        uncertainty: null,
        from: 'channel list',
      },
      thresholds: {
        alert: { effective: 3, verdict: 'within', change: 'corrected' },
        danger: { effective: 5, verdict: 'within', change: 'corrected', panel: 5, interimSetpoint: null },
      },
      asFound: { verdict: 'late', gapVoltage: null, linearReach: null },
      asFoundSensitivity: { configured: 200, measured: 160, unit: 'mV/mil', error: -0.2 },
      asFoundThresholds: {
        alert: { effective: 3.75, verdict: 'late', change: null },
        danger: { effective: 6.25, verdict: 'late', change: null },
      },
    },
  ],
  problems: ['earlier-result @ Result!A1'],
  attention: [],
  summary: { late: 0, within: 1, critical: 0, warnings: 0, asLeft: 1, corrected: 1 },
};
