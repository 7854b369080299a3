import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

export const golden: GoldenCase = {
  because:
    'By hand, away, V0c −10 V, V0m −15 V, 200 mV/mil: T = (20·200 − 5000)/200 = −5 mil, on the other side of zero; the alert ' +
    '(15·200 − 5000)/200 = −10. At 15 mil it shows (15·200 + 5000)/200 = 40 mil, at 20 mil 45; no setpoint is offered for what can’t act. Toward, 45 mil about −10 V is −10 + 9 = −1 V, outside −2 to −18 V (common practice, no ' +
    'source); 15 mil is −7 V. The counter danger of 45 mil is −19 V, outside at the other end; the counter alert of 15 mil is −13 V.',
  book: book(
    [
      'Channels',
      [
        ['Tag', 'Kind', 'Measured sensitivity (mV/mil)', 'Measured zero voltage (V)', 'Positive direction'],
        ['rest', 'axial', 200, -15, 'away'],
        ['volts', 'axial', 200, -10, 'toward'],
      ],
    ],
    [
      'Monitor',
      [
        [
          'Tag',
          'Configured sensitivity (mV/mil)',
          'Alert (mil)',
          'Danger (mil)',
          'Configured zero voltage (V)',
          'Counter alert (mil)',
          'Counter danger (mil)',
        ],
        ['rest', 200, 15, 20, -10, null, null],
        ['volts', 200, 15, 45, -10, 15, 45],
      ],
    ],
  ),
  channels: [
    {
      tag: 'rest',
      verdict: 'unreachable',
      thresholds: {
        alert: {
          effective: -10,
          unreachable: ['on the other side of zero'],
          panel: 40,
          interimSetpoint: null,
        },
        danger: {
          effective: -5,
          unreachable: ['on the other side of zero'],
          indicatedAtSetpoint: 45,
          panel: 45,
        },
      },
      findings: [
        'alert-on-the-other-side-of-zero @ Monitor!C2',
        'danger-on-the-other-side-of-zero @ Monitor!D2',
      ],
    },
    {
      tag: 'volts',
      verdict: 'unreachable',
      thresholds: {
        alert: { verdict: 'within' },
        danger: { effective: 45, unreachable: ['out of the linear reach'] },
        'counter alert': { verdict: 'within' },
        'counter danger': { effective: -45, unreachable: ['out of the linear reach'] },
      },
      findings: [
        'danger-out-of-linear-reach @ Monitor!D3',
        'counter-danger-out-of-linear-reach @ Monitor!G3',
      ],
    },
  ],
};
