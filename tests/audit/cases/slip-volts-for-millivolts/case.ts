import type { GoldenCase } from '../../golden.ts';
import { oneChannel } from '../../book.ts';

export const golden: GoldenCase = {
  because:
    '0.2 in a column of mV/mil is the rated 200 over 1000 (common practice, no source): volts where millivolts are meant.',
  book: oneChannel({ measured: 0.2 }),
  channels: [
    {
      tag: 'V-1',
      verdict: 'late',
      findings: ['alert-late @ Monitor!C2', 'danger-late @ Monitor!D2', 'unit-slip-suspected @ Channels!C2'],
    },
  ],
  says: [/in V where mV is meant/],
};
