import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

export const golden: GoldenCase = {
  because:
    'By hand: 3 × 5 mil × 200/160 = 18.75 mil and 3 × 3 × 1.25 = 11.25 mil, beside 6.25 and 3.75 without the multiplier. On a full ' +
    'scale of 10 mil the multiplied danger of 15 mil cannot act, the multiplied alert of 9 mil can.',
  book: book(
    [
      'Channels',
      [
        ['Tag', 'Measured sensitivity (mV/mil)'],
        ['wide', 160],
        ['narrow', 200],
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
          'Full scale (mil)',
          'Set-point multiplier',
        ],
        ['wide', 200, 3, 5, 20, 3],
        ['narrow', 200, 3, 5, 10, 3],
      ],
    ],
  ),
  channels: [
    {
      tag: 'narrow',
      verdict: 'unreachable',
      thresholds: {
        alert: { verdict: 'within' },
        danger: { verdict: 'within' },
        'alert ×3': { verdict: 'within', effective: 9 },
        'danger ×3': {
          verdict: 'unreachable',
          setpoint: 5,
          effective: 15,
          unreachable: ['above full scale'],
        },
      },
      findings: ['danger-multiplied-above-full-scale @ Monitor!F3'],
    },
    {
      tag: 'wide',
      verdict: 'late',
      thresholds: {
        alert: { effective: 3.75 },
        danger: { effective: 6.25, interimSetpoint: 4 },
        'alert ×3': { setpoint: 3, effective: 11.25, shift: 2.25 },
        'danger ×3': {
          setpoint: 5,
          effective: 18.75,
          shift: 3.75,
          shiftFraction: 0.25,
          verdict: 'late',
          interimSetpoint: null,
        },
      },
      findings: [
        'alert-late @ Monitor!C2',
        'danger-late @ Monitor!D2',
        'alert-late @ Monitor!C2',
        'danger-late @ Monitor!D2',
      ],
    },
  ],
};
