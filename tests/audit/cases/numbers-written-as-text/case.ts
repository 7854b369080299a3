import type { GoldenCase } from '../../golden.ts';
import { oneChannel } from '../../book.ts';

export const golden: GoldenCase = {
  because: 'A number written as text counts, and is noted: 5 × 200/160 = 6.25 mil as if it were a number.',
  book: oneChannel({
    measured: ' 160 ',
    configured: '200',
    danger: '+5.0',
    channel: { 'Gap voltage (V)': '−10' },
  }),
  channels: [
    {
      tag: 'V-1',
      verdict: 'late',
      inputs: { gapVoltage: -10 },
      thresholds: { alert: { effective: 3.75 }, danger: { setpoint: 5, effective: 6.25 } },
      findings: [
        'number-written-as-text @ Channels!C2',
        'number-written-as-text @ Channels!D2',
        'number-written-as-text @ Monitor!B2',
        'number-written-as-text @ Monitor!D2',
        'alert-late @ Monitor!C2',
        'danger-late @ Monitor!D2',
      ],
    },
  ],
};
