import type { GoldenCase } from '../../golden.ts';
import { oneChannel } from '../../book.ts';

export const golden: GoldenCase = {
  because:
    'By hand: 220/200 = 1.10 is above 1.05, so early; 5 mil × 200/220 = 4.5454… mil. 16 V of linear span cover 16000/220 = 72.7 ' +
    'mil, below 95 % of 80 mil (common practice, no source). Both readings high: too little cable (common practice, no source).',
  book: oneChannel({
    measured: 220,
    channel: {
      'Gap voltage (V)': -11.5,
      'Reference gap voltage (V)': -10,
      'Reference sensitivity (mV/mil)': 201,
    },
  }),
  channels: [
    {
      tag: 'V-1',
      verdict: 'early',
      sensitivity: { error: 0.1 },
      thresholds: {
        alert: { effective: 600 / 220, verdict: 'early' },
        danger: {
          effective: 1000 / 220,
          low: null,
          high: null,
          shift: 1000 / 220 - 5,
          shiftFraction: 200 / 220 - 1,
          indicatedAtSetpoint: 5.5,
          verdict: 'early',
        },
      },
      findings: [
        'alert-early @ Monitor!C2',
        'danger-early @ Monitor!D2',
        'linear-range-short @ Channels!C2',
        'readings-point-to-a-cause @ Channels!D2',
      ],
    },
  ],
  says: [/too little cable/],
};
