import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

export const golden: GoldenCase = {
  because:
    'What can be worked out is: with the alert missing the danger still acts at 5 × 200/160 = 6.25 mil. A channel is the worst of its thresholds, and danger counts before alert: a missing danger leaves it incomplete.',
  book: book([
    'All',
    [
      [
        'Tag',
        'Measured sensitivity (mV/mil)',
        'Configured sensitivity (mV/mil)',
        'Alert (mil)',
        'Danger (mil)',
      ],
      ['no alert', 160, 200, null, 5],
      ['no danger', 200, 200, 3, null],
      ['no alert, right', 200, 200, null, 5],
      ['no danger, late', 160, 200, 3, null],
    ],
  ]),
  channels: [
    {
      tag: 'no alert',
      verdict: 'late',
      thresholds: {
        alert: { verdict: 'incomplete', setpoint: null, obstacles: ['a setpoint is missing'] },
        danger: { effective: 6.25, obstacles: [] },
      },
      findings: ['danger-late @ All!E2', 'value-missing @ All!D2'],
    },
    {
      tag: 'no danger',
      verdict: 'incomplete',
      thresholds: { alert: { effective: 3, verdict: 'within' }, danger: { verdict: 'incomplete' } },
      findings: ['value-missing @ All!E3'],
    },
    {
      tag: 'no danger, late',
      verdict: 'incomplete',
      thresholds: { alert: { effective: 3.75, verdict: 'late' }, danger: { verdict: 'incomplete' } },
      findings: ['alert-late @ All!D5', 'value-missing @ All!E5'],
    },
    { tag: 'no alert, right', verdict: 'incomplete', findings: ['value-missing @ All!D4'] },
  ],
};
