import type { GoldenCase } from '../../golden.ts';
import { oneChannel } from '../../book.ts';

export const golden: GoldenCase = {
  because:
    'ISO 20816-3 zones (from memory): 80, 150 and 220 µm at 3600 r/min. By hand: 3 mil is 76.2 µm (A) and acts at 95.25 µm (B); 5 mil is 127 µm (B) and acts at 158.75 µm (C).',
  book: oneChannel({ measured: 160, channel: { 'Speed (Hz)': 60 } }),
  channels: [
    {
      tag: 'V-1',
      verdict: 'late',
      inputs: { speed: 3600 },
      thresholds: { alert: { intendedZone: 'A', zone: 'B' }, danger: { intendedZone: 'B', zone: 'C' } },
      findings: [
        'alert-late @ Monitor!C2',
        'danger-late @ Monitor!D2',
        'alert-in-worse-zone @ Monitor!C2',
        'danger-in-worse-zone @ Monitor!D2',
      ],
    },
  ],
};
