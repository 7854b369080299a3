import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

export const golden: GoldenCase = {
  because:
    'The unit right beside a number is its own, whatever the units of the other columns: 76.2 µm and 5 mil.',
  book: book(
    [
      'Channels',
      [
        ['Tag', 'Measured sensitivity (mV/mil)'],
        ['A', 200],
      ],
    ],
    [
      'Monitor',
      [
        ['Tag', 'Configured sensitivity (mV/mil)', 'Full scale', 'Unit', 'Alert', 'Unit', 'Danger', 'Unit'],
        ['A', 200, 10, 'mil', 76.2, 'µm', 5, 'mil'],
      ],
    ],
  ),
  channels: [
    { tag: 'A', verdict: 'within', thresholds: { alert: { setpoint: 3 }, danger: { setpoint: 5 } } },
  ],
  problems: ['units-mixed @ Monitor!G2'],
};
