import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

export const golden: GoldenCase = {
  because:
    'By hand, away, V0c −10 V, V0m −15 V, 200 mV/mil: T = (200·T0 − 5000)/200 = T0 − 25 mil, so that 5, 10 and, multiplied by 2, ' +
    '10 and 20 mil act at −20, −15, −15 and −5 mil, all on the other side of zero. Toward, 25 mil about −10 V is −10 + 5 = −5 V, ' +
    'inside −2 to −18 V (common practice, no source); multiplied, 50 mil is 0 V, outside. 10 mil, the multiplied alert, is −8 V.',
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
          'Set-point multiplier',
        ],
        ['rest', 200, 5, 10, -10, 2],
        ['volts', 200, 5, 25, -10, 2],
      ],
    ],
  ),
  channels: [
    {
      tag: 'rest',
      verdict: 'unreachable',
      thresholds: {
        alert: { effective: -20, unreachable: ['on the other side of zero'] },
        danger: { effective: -15, unreachable: ['on the other side of zero'] },
        'alert ×2': { effective: -15, unreachable: ['on the other side of zero'] },
        'danger ×2': { effective: -5, unreachable: ['on the other side of zero'] },
      },
      findings: [
        'alert-on-the-other-side-of-zero @ Monitor!C2',
        'danger-on-the-other-side-of-zero @ Monitor!D2',
        'alert-multiplied-on-the-other-side-of-zero @ Monitor!F2',
        'danger-multiplied-on-the-other-side-of-zero @ Monitor!F2',
      ],
    },
    {
      tag: 'volts',
      verdict: 'unreachable',
      thresholds: {
        alert: { verdict: 'within' },
        danger: { verdict: 'within' },
        'alert ×2': { verdict: 'within', effective: 10 },
        'danger ×2': { effective: 50, unreachable: ['out of the linear reach'] },
      },
      findings: ['danger-multiplied-out-of-linear-reach @ Monitor!F3'],
    },
  ],
};
