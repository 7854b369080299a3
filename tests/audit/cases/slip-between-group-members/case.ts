import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

export const golden: GoldenCase = {
  because:
    'Members of a group watch one motion, so setpoints of 5 and 10 mil, or 5 mil and 127 mil, differ by just a unit (common practice, no source). 5 mil and 127 µm are equal.',
  book: book(
    [
      'Channels',
      [['Tag', 'Measured sensitivity (mV/mil)'], ...['A', 'B', 'C', 'D', 'E', 'F'].map((tag) => [tag, 200])],
    ],
    [
      'Monitor',
      [
        ['Tag', 'Configured sensitivity (mV/mil)', 'Alert', 'Danger', 'Unit', 'Voting group', 'Voting'],
        ['A', 200, 3, 5, 'mil', 'peak', '1oo2'],
        ['B', 200, 6, 10, 'mil', 'peak', '1oo2'],
        ['C', 200, 3, 5, 'mil', 'unit', '1oo2'],
        ['D', 200, 20, 0.19685, 'mil', 'unit', '1oo2'],
        ['E', 200, 3, 5, 'mil', 'same', '1oo2'],
        ['F', 200, 76.2, 127, 'µm', 'same', '1oo2'],
      ],
    ],
  ),
  channels: [
    { tag: 'A', verdict: 'within' },
    { tag: 'B', verdict: 'within', findings: ['unit-slip-suspected @ Monitor!F3'] },
    { tag: 'C', verdict: 'within' },
    {
      tag: 'D',
      verdict: 'within',
      findings: [
        'alert-not-below-danger @ Monitor!C5',
        'unit-slip-suspected @ Monitor!D5',
        'unit-slip-suspected @ Monitor!F5',
      ],
    },
    { tag: 'E', verdict: 'within' },
    { tag: 'F', verdict: 'within' },
  ],
  groups: [
    { name: 'peak', threshold: 'danger', intended: 5, effective: 5, decidedBy: ['A'] },
    { name: 'peak', threshold: 'alert', intended: 3 },
    { name: 'unit', threshold: 'danger', effective: 0.19685, decidedBy: ['D'] },
    { name: 'unit', threshold: 'alert', effective: 3 },
    { name: 'same', threshold: 'danger', unit: 'mil', effective: 5, decidedBy: ['E', 'F'] },
    { name: 'same', threshold: 'alert', effective: 3 },
  ],
  problems: ['units-mixed @ Monitor!C7'],
};
