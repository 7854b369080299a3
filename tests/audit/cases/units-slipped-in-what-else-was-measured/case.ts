import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

export const golden: GoldenCase = {
  because:
    'L1 gives its loop currents in A as the header says: 20·(9.68 − 4.05)/15.75 = 7.1492 for danger 7.1. L2 gives mA there: no loop has 4050 mA. P gives 100 mV where V is meant: no zero is uncertain by 100 V. F gives fractions where percent is meant, 0.01 for 1 %: used as written, and said. G’s 0 is nothing shared, which may well be.',
  book: book(
    [
      'Channels',
      [
        [
          'Tag',
          'Kind',
          'Measured sensitivity',
          'Unit',
          'Uncertainty (%)',
          'Shared uncertainty (%)',
          'Loop current at 0 % (A)',
          'Loop current at 100 % (A)',
          'Zero voltage (V)',
          'Zero voltage uncertainty (V)',
        ],
        ['L1', 'loop', 0.8, 'mA/(mm/s)', null, null, 0.00405, 0.0198, null, null],
        ['L2', 'loop', 0.8, 'mA/(mm/s)', null, null, 4.05, 19.8, null, null],
        ['P', 'axial', 7.874, 'mV/µm', null, null, null, null, -10, 100],
        ['F', 'radial', 7.874, 'mV/µm', 3, 0.02, null, null, null, null],
        ['G', 'radial', 7.874, 'mV/µm', 3, 0, null, null, null, null],
      ],
    ],
    [
      'Monitor',
      [
        [
          'Tag',
          'Configured sensitivity',
          'Unit',
          'Alert',
          'Alert unit',
          'Danger',
          'Danger unit',
          'Configured zero voltage (V)',
          'Monitor gain uncertainty (%)',
        ],
        ['L1', 0.8, 'mA/(mm/s)', 5, 'mm/s', 7.1, 'mm/s', null, null],
        ['L2', 0.8, 'mA/(mm/s)', 5, 'mm/s', 7.1, 'mm/s', null, null],
        ['P', 7.874, 'mV/µm', 300, 'µm', 500, 'µm', -10, null],
        ['F', 7.874, 'mV/µm', 75, 'µm', 125, 'µm', null, 0.01],
        ['G', 7.874, 'mV/µm', 75, 'µm', 125, 'µm', null, 0],
      ],
    ],
  ),
  channels: [
    {
      tag: 'L2',
      verdict: 'incomplete',
      findings: ['value-out-of-range @ Channels!G3', 'value-out-of-range @ Channels!H3'],
    },
    { tag: 'P', verdict: 'incomplete', findings: ['value-out-of-range @ Channels!J4'] },
    {
      tag: 'L1',
      verdict: 'within',
      thresholds: { alert: {}, danger: { effective: (20 * (9.68 - 4.05)) / 15.75 } },
    },
    {
      tag: 'F',
      verdict: 'within',
      inputs: { gainUncertainty: 0.0001 },
      findings: ['unit-slip-suspected @ Channels!F5', 'unit-slip-suspected @ Monitor!I5'],
    },
    { tag: 'G', verdict: 'within' },
  ],
  says: [
    /4\.05 A is outside its physical range: it must be 0\.1 or less/u,
    /100 V is outside its physical range: it must be 5 or less/u,
    /monitor gain uncertainty of 0\.01 % is smaller .* may be a fraction where percent is meant/u,
    /shared uncertainty of 0\.02 % is smaller/u,
  ],
};
