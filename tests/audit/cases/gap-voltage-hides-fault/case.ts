import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

export const golden: GoldenCase = {
  because:
    'Pattern of the readings (common practice, no source; within 5 % and 0.5 V is right): sensitivity off with the gap voltage right hides the fault; sensitivity right and gap off is the probe position; low and wide has no usual cause; both right says nothing.',
  book: book([
    'All',
    [
      [
        'Tag',
        'Measured sensitivity (mV/mil)',
        'Gap voltage (V)',
        'Reference gap voltage (V)',
        'Configured sensitivity (mV/mil)',
        'Alert (mil)',
        'Danger (mil)',
      ],
      ['hidden', 160, -10.4, -10, 200, 3, 5],
      ['moved', 200, -12, -10, 200, 3, 5],
      ['odd', 160, -12, -10, 200, 3, 5],
      ['right', 200, -10, -10, 200, 3, 5],
    ],
  ]),
  channels: [
    {
      tag: 'hidden',
      verdict: 'late',
      findings: ['alert-late @ All!F2', 'danger-late @ All!G2', 'gap-voltage-hides-fault @ All!C2'],
    },
    {
      tag: 'odd',
      verdict: 'late',
      findings: ['alert-late @ All!F4', 'danger-late @ All!G4', 'readings-point-to-a-cause @ All!C4'],
    },
    { tag: 'moved', verdict: 'within', findings: ['readings-point-to-a-cause @ All!C3'] },
    { tag: 'right', verdict: 'within' },
  ],
  says: [/probe position/, /no single usual cause/],
};
