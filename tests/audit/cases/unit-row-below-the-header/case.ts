import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

export const golden: GoldenCase = {
  because:
    'A row of units right below the header is no channel. By hand: 127 µm × 7.9/6.3 = 159.25 µm (1.254 late); a unit in the header itself holds where both stand.',
  book: book(
    [
      'Channels',
      [
        ['Tag', 'Measured sensitivity', 'Gap voltage', 'Speed'],
        [null, 'mV/µm', '[V DC]', 'rpm'],
        ['A', 6.3, -10, 3000],
      ],
    ],
    [
      'Monitor',
      [
        ['Tag', 'Configured sensitivity (mV/µm)', 'Alert', 'Danger'],
        ['', null, '(µm p-p)', 'µm p-p'],
        ['A', 7.9, 76, 127],
      ],
    ],
  ),
  channels: [
    {
      tag: 'A',
      verdict: 'late',
      is: { unit: 'µm', detection: 'p-p' },
      inputs: { speed: 3000, gapVoltage: -10 },
      thresholds: {
        alert: { effective: (76 * 7.9) / 6.3 },
        danger: { effective: (127 * 7.9) / 6.3, intendedZone: 'B', zone: 'B' },
      },
      findings: ['alert-late @ Monitor!C3', 'alert-in-worse-zone @ Monitor!C3', 'danger-late @ Monitor!D3'],
    },
  ],
};
