import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

export const golden: GoldenCase = {
  because:
    'The monitor can show no more than its full scale: danger 6 mil on a full scale of 5 mil cannot act; danger 5 mil on 5 mil can. ' +
    'An alert above it cannot act either.',
  book: book(
    [
      'Channels',
      [
        ['Tag', 'Measured sensitivity (mV/mil)'],
        ['above', 200],
        ['on it', 200],
        ['both', 200],
      ],
    ],
    [
      'Monitor',
      [
        ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)', 'Full scale (mil)'],
        ['above', 200, 3, 6, 5],
        ['on it', 200, 3, 5, 5],
        ['both', 200, 5.5, 6, 5],
      ],
    ],
  ),
  channels: [
    {
      tag: 'above',
      verdict: 'unreachable',
      thresholds: {
        alert: { verdict: 'within', unreachable: [] },
        danger: { verdict: 'unreachable', effective: 6, unreachable: ['above full scale'] },
      },
      findings: ['danger-above-full-scale @ Monitor!D2'],
    },
    {
      tag: 'both',
      verdict: 'unreachable',
      findings: ['alert-above-full-scale @ Monitor!C4', 'danger-above-full-scale @ Monitor!D4'],
    },
    { tag: 'on it', verdict: 'within' },
  ],
  summary: { unreachable: 2, within: 1 },
};
