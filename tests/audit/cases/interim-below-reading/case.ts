import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

export const golden: GoldenCase = {
  because:
    'By hand at 160 for 200: the interim setpoints are 3 × 0.8 = 2.4 and 5 × 0.8 = 4 mil. Shown 3 mil (real 3 × 1.25 = 3.75 mil) lies beyond 2.4: it would act on entry; headroom to danger 6.25 − 3.75 = 2.5 mil. ' +
    'In steps of 0.7 mil they are 2.1 and 3.5 mil (towards the early side); in steps of 3 mil there is none for the alert and 3 mil for the danger, which 3 mil shown meets.',
  book: book(
    [
      'Channels',
      [
        ['Tag', 'Measured sensitivity (mV/mil)', 'Present reading (mil)'],
        ['plain', 160, 3],
        ['steps', 160, 2],
        ['coarse', 160, 3],
      ],
    ],
    [
      'Monitor',
      [
        ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)', 'Resolution (mil)'],
        ['plain', 200, 3, 5, null],
        ['steps', 200, 3, 5, 0.7],
        ['coarse', 200, 3, 5, 3],
      ],
    ],
  ),
  channels: [
    {
      tag: 'plain',
      verdict: 'late',
      inputs: { reading: 3, realReading: 3.75 },
      thresholds: {
        alert: { interimSetpoint: 2.4, headroom: 0 },
        danger: { interimSetpoint: 4, headroom: 2.5 },
      },
      findings: [
        'alert-late @ Monitor!C2',
        'danger-late @ Monitor!D2',
        'alert-interim-below-reading @ Channels!C2',
      ],
    },
    {
      tag: 'steps',
      verdict: 'late',
      thresholds: { alert: { interimSetpoint: 2.1 }, danger: { interimSetpoint: 3.5 } },
      findings: ['alert-late @ Monitor!C3', 'danger-late @ Monitor!D3'],
    },
    {
      tag: 'coarse',
      verdict: 'late',
      thresholds: { alert: { interimSetpoint: null }, danger: { interimSetpoint: 3 } },
      findings: [
        'alert-late @ Monitor!C4',
        'danger-late @ Monitor!D4',
        'alert-has-no-interim-setpoint @ Monitor!E4',
        'danger-interim-below-reading @ Channels!C4',
      ],
    },
  ],
};
