import type { GoldenCase } from '../../golden.ts';
import { oneChannel } from '../../book.ts';

export const golden: GoldenCase = {
  because:
    '100 measured against 200 configured is a factor of 2, that between peak-to-peak and zero-to-peak of a sinusoid.',
  book: oneChannel({ measured: 100 }),
  channels: [
    {
      tag: 'V-1',
      verdict: 'late',
      thresholds: { alert: { effective: 6 }, danger: { effective: 10 } },
      findings: ['alert-late @ Monitor!C2', 'danger-late @ Monitor!D2', 'unit-slip-suspected @ Channels!C2'],
    },
  ],
  says: [/peak-to-peak/],
};
