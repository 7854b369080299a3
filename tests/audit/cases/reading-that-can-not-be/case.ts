import type { GoldenCase } from '../../golden.ts';
import { oneChannel } from '../../book.ts';

export const golden: GoldenCase = {
  because: 'A vibration below 0 is none: it is said and not used; no number of the report is NaN.',
  book: oneChannel({ channel: { 'Present reading (mil)': -2 } }),
  channels: [
    {
      tag: 'V-1',
      verdict: 'within',
      inputs: { reading: null, realReading: null },
      findings: ['value-out-of-range @ Channels!D2'],
    },
  ],
};
