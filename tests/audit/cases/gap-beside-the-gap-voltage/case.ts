import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

export const golden: GoldenCase = {
  because:
    'A column Gap in mil can be no gap voltage, and Channel beside Tag is no second tag: one column alone fits each. A length in mil beside a probe is what an audit of probes could want, so it is said that it was not read. By hand: 5·200/160 = 6.25 mil.',
  book: book([
    'All',
    [
      [
        'Channel',
        'Tag',
        'Gap (mil)',
        'Gap voltage (V)',
        'Measured sensitivity (mV/mil)',
        'Configured sensitivity (mV/mil)',
        'Alert (mil)',
        'Danger (mil)',
      ],
      [7, 'A', 50, -10, 160, 200, 3, 5],
    ],
  ]),
  notRead: ['column a level @ All!C1'],
  channels: [
    {
      tag: 'A',
      verdict: 'late',
      inputs: { gapVoltage: -10 },
      thresholds: { alert: { effective: 3.75 }, danger: { effective: 6.25 } },
      findings: ['alert-late @ All!G2', 'danger-late @ All!H2'],
    },
  ],
};
