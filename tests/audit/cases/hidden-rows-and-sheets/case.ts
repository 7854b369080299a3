import type { GoldenCase } from '../../golden.ts';
import { book, sheet } from '../../book.ts';

export const golden: GoldenCase = {
  because:
    'What is hidden or filtered away still protects a machine: it is audited all the same, and that is said.',
  book: book(
    sheet(
      'Channels',
      [
        ['Tag', 'Measured sensitivity (mV/mil)'],
        ['A', 160],
        ['B', 200],
      ],
      { hiddenRows: new Set([2]) },
    ),
    sheet(
      'Monitor',
      [
        ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)'],
        ['A', 200, 3, 5],
        ['B', 200, 3, 5],
      ],
      { hidden: true, hiddenRows: new Set([3]) },
    ),
  ),
  channels: [
    {
      tag: 'A',
      verdict: 'late',
      findings: ['alert-late @ Monitor!C2', 'danger-late @ Monitor!D2', 'hidden-row @ Channels!A2'],
    },
    { tag: 'B', verdict: 'within', findings: ['hidden-row @ Monitor!A3'] },
  ],
  problems: ['hidden-sheet @ Monitor!A1'],
};
