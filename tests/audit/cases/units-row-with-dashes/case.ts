import { book } from '../../book.ts';
import type { GoldenCase } from '../../golden.ts';

export const golden: GoldenCase = {
  because:
    'A row of units as people write it: "Units" or a dash where there is none, words under words. By hand: 127 µm × 200/160 = 158.75 µm.',
  book: book(
    [
      'Channels',
      [
        ['Tag', 'Machine', 'Measured sensitivity', 'Uncertainty', 'Coverage factor'],
        ['Units', 'text', 'mV/mil', '%', '-'],
        ['R-1', 'Pump', 160, 3, 2],
      ],
    ],
    [
      'Monitor',
      [
        ['Tag', 'Configured sensitivity', 'Alert', 'Danger', 'Set-point multiplier', 'Bypass'],
        ['[-]', 'mV/mil', 'µm', 'µm', '1', 'yes/no'],
        ['R-1', 200, 80, 127, 1, 'no'],
      ],
    ],
  ),
  channels: [
    {
      tag: 'R-1',
      verdict: 'late',
      is: { unit: 'µm' },
      thresholds: { alert: {}, danger: { effective: 158.75 } },
      findings: ['alert-late @ Monitor!C3', 'danger-late @ Monitor!D3'],
    },
  ],
};
