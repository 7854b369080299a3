import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

export const golden: GoldenCase = {
  because:
    'A cell with its own unit is converted: 6.3 mV/µm × 25.4 = 160.02 mV/mil. 50 % of a full scale of 10 mil is 5 mil, which acts at 5 × 200/160.02 = 6.249219 mil. ' +
    'About 160 is no measured number; a casing velocity is not measured in mV/mil; a sign for nothing is a blank; a share without a full scale is no level.',
  standard: false,
  book: book(
    [
      'Test',
      [
        ['Machine', 'Fan 1'],
        [],
        ['Instrument', 'Type', 'SF tested (mV/mil)', 'Gap volts (V)'],
        ['A-1', 'radial', '6.3 mV/µm', -9],
        ['A-2', 'radial', '~160', -9],
        ['A-3', 'casing velocity', 200, -9],
        ['A-4', 'radial', 200, 'n/a'],
        ['A-5', 'radial', 200, -9],
        ['Mean', null, 190, -9],
      ],
    ],
    [
      'Rack',
      [
        ['Instrument', 'Rack SF (mV/mil)', 'H (% FS)', 'HH (% FS)', 'Full scale (mil)'],
        ['A-1', 200, 30, 50, 10],
        ['A-2', 200, 30, 50, 10],
        ['A-3', 200, 30, 50, 10],
        ['A-4', 200, 30, 50, 10],
        ['A-5', 200, 30, 50, null],
      ],
    ],
  ),
  channels: [
    {
      tag: 'A-1',
      verdict: 'late',
      is: {
        machine: 'Fan 1',
        source: { channels: { sheet: 'Test', row: 4 }, settings: { sheet: 'Rack', row: 2 } },
      },
      thresholds: {
        alert: { setpoint: 3 },
        danger: { setpoint: 5, effective: 1000 / 160.02, verdict: 'late' },
      },
      findings: [
        'alert-late @ Rack!C2',
        'danger-late @ Rack!D2',
        'unit-in-cell @ Test!C4',
        'share-of-full-scale @ Rack!C2',
        'share-of-full-scale @ Rack!D2',
      ],
    },
    {
      tag: 'A-2',
      verdict: 'incomplete',
      findings: [
        'number-in-doubt @ Test!C5',
        'share-of-full-scale @ Rack!C3',
        'share-of-full-scale @ Rack!D3',
      ],
    },
    {
      tag: 'A-3',
      verdict: 'incomplete',
      findings: [
        'kind-against-unit @ Test!B6',
        'share-of-full-scale @ Rack!C4',
        'share-of-full-scale @ Rack!D4',
      ],
    },
    {
      tag: 'A-5',
      verdict: 'incomplete',
      findings: ['share-without-full-scale @ Rack!C6', 'share-without-full-scale @ Rack!D6'],
    },
    {
      tag: 'A-4',
      verdict: 'within',
      findings: ['said-blank @ Test!D7', 'share-of-full-scale @ Rack!C5', 'share-of-full-scale @ Rack!D5'],
    },
  ],
  problems: ['left-aside @ Test!A9', 'machine-of-list @ Test!A1'],
};
