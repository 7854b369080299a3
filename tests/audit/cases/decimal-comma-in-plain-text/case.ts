import type { GoldenCase } from '../../golden.ts';
import { book, sheet } from '../../book.ts';

export const golden: GoldenCase = {
  because:
    'In a text file every cell is text, so nothing is noted; where its decimal sign is the comma, 1,234 is 1.234 and 1.234 is not a number.',
  book: book(
    sheet(
      'list',
      [
        ['Tag', 'Measured sensitivity (V/mil)'],
        ['A', '0,160'],
        ['B', '0.160'],
      ],
      { plainText: { decimal: ',' } },
    ),
    sheet(
      'monitor',
      [
        ['Tag', 'Configured sensitivity (V/mil)', 'Alert (mil)', 'Danger (mil)'],
        ['A', '0,200', '1,234', '5'],
        ['B', '0,200', '3', '5'],
      ],
      { plainText: { decimal: ',' } },
    ),
  ),
  channels: [
    {
      tag: 'A',
      verdict: 'late',
      thresholds: { alert: { setpoint: 1.234, effective: 1.234 * 1.25 }, danger: { effective: 6.25 } },
      findings: ['alert-late @ monitor!C2', 'danger-late @ monitor!D2'],
    },
    { tag: 'B', verdict: 'incomplete', findings: ['value-not-a-number @ list!B3'] },
  ],
};
