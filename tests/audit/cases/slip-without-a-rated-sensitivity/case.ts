import type { GoldenCase } from '../../golden.ts';
import { oneChannel } from '../../book.ts';

export const golden: GoldenCase = {
  because:
    'With no rated sensitivity in the policy, 7.8 against 200 mV/mil is a factor of 25.6, about the 25.4 µm of a mil.',
  book: oneChannel({ measured: 7.8 }),
  policy: { ratedSensitivity: { radial: null } },
  channels: [
    {
      tag: 'V-1',
      verdict: 'late',
      findings: ['alert-late @ Monitor!C2', 'danger-late @ Monitor!D2', 'unit-slip-suspected @ Channels!C2'],
    },
  ],
};
