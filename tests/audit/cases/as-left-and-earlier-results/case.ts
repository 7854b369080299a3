import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

export const golden: GoldenCase = {
  because:
    'The verdict is on what was found, not on what was left behind: 160, not 200. A sheet that an earlier audit wrote is no input, however its headers read.',
  book: book(
    [
      'Channels',
      [
        ['Tag', 'Measured sensitivity (mV/mil)', 'As-left sensitivity (mV/mil)'],
        ['A', 160, 200],
      ],
    ],
    [
      'Monitor',
      [
        ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)'],
        ['A', 200, 3, 5],
      ],
    ],
    ['Result', [['Tripdrift audit of 2025'], ['Tag', 'Measured sensitivity (mV/mil)'], ['A', 200]]],
  ),
  channels: [
    { tag: 'A', verdict: 'late', findings: ['alert-late @ Monitor!C2', 'danger-late @ Monitor!D2'] },
  ],
  problems: ['as-left-not-judged @ Channels!C1', 'earlier-result @ Result!A1'],
};
