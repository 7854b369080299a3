import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

export const golden: GoldenCase = {
  because:
    'Units in columns, row by row: 150 mV/mil against 7.874015748031496 mV/µm (200 mV/mil, exact mil of 25.4 µm, NIST SP 811) acts at 4/3 of the setpoint; ' +
    '6.299212598425197 V/mm is 160 mV/mil. Rows in unlike units are told of.',
  book: book(
    [
      'Channels',
      [
        ['Tag', 'Measured sensitivity', 'Measured sensitivity unit', 'Limit', 'Limit units'],
        ['A', 150, 'mV/mil', 0.2, 'mm'],
        ['B', 6.299212598425197, 'V/mm', 8, 'thou'],
      ],
    ],
    [
      'Monitor',
      [
        ['Tag', 'Configured sensitivity', 'Unit', 'Alert', 'Danger', 'UoM'],
        ['A', 7.874015748031496, 'mV/µm', 76.2, 127, 'um'],
        ['B', 0.2, 'V/mil', 3, 5, 'mils'],
      ],
    ],
  ),
  channels: [
    {
      tag: 'A',
      verdict: 'late',
      is: { unit: 'µm' },
      sensitivity: { unit: 'mV/µm', measured: 150 / 25.4, configured: 200 / 25.4, error: -0.25 },
      inputs: { limit: 200 },
      thresholds: { alert: { effective: 101.6 }, danger: { effective: 508 / 3 } },
      findings: ['alert-late @ Monitor!D2', 'danger-late @ Monitor!E2'],
    },
    {
      tag: 'B',
      verdict: 'late',
      is: { unit: 'mil' },
      sensitivity: { unit: 'V/mil', measured: 0.16, configured: 0.2 },
      inputs: { limit: 8 },
      thresholds: { alert: { effective: 3.75 }, danger: { effective: 6.25 } },
      findings: ['alert-late @ Monitor!D3', 'danger-late @ Monitor!E3'],
    },
  ],
  problems: [
    'units-mixed @ Channels!B3',
    'units-mixed @ Channels!D3',
    'units-mixed @ Monitor!B3',
    'units-mixed @ Monitor!D3',
  ],
};
