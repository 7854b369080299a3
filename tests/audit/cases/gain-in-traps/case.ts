import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

export const golden: GoldenCase = {
  because:
    'By hand: A is right by its sensitivity, but its monitor shows 0.9 of what is injected: danger acts at 5/0.9 = 5.5556 mil, alert at 3/0.9 = 3.3333, both 11.1 % late; the panel readings 5·0.9 = 4.5 and 2.7. B has its gain in the channel list, which is not its table: the same, with 1 % from 5.5556/1.01 to 5.5556/0.99. C has 0.9 in one table and 0.95 in the other. D’s gain of 0.49 and E’s of 2.1 are outside 0.5 to 2, so rather another quantity. F is a tenth high: 5/1.1 = 4.545 acts early by 1/11.',
  book: book(
    [
      'Channels',
      [
        ['Tag', 'Measured sensitivity (mV/mil)', 'Monitor gain', 'Uncertainty of the monitor gain (%)'],
        ['A', 200, null, null],
        ['B', 200, 0.9, 1],
        ['C', 200, 0.9, null],
        ['D', 200, null, null],
        ['E', 200, 2.1, null],
        ['F', 200, null, null],
      ],
    ],
    [
      'Monitor',
      [
        ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)', 'Monitor gain'],
        ['A', 200, 3, 5, 0.9],
        ['B', 200, 3, 5, null],
        ['C', 200, 3, 5, 0.95],
        ['D', 200, 3, 5, 0.49],
        ['E', 200, 3, 5, null],
        ['F', 200, 3, 5, 1.1],
      ],
    ],
  ),
  channels: [
    {
      tag: 'A',
      verdict: 'late',
      inputs: { gain: 0.9, gainUncertainty: null },
      thresholds: {
        alert: { effective: 3 / 0.9, panel: 2.7, verdict: 'late' },
        danger: { effective: 5 / 0.9, low: null, high: null, panel: 4.5, verdict: 'late' },
      },
      findings: ['alert-late @ Monitor!C2', 'danger-late @ Monitor!D2', 'monitor-gain-off @ Monitor!E2'],
    },
    {
      tag: 'B',
      verdict: 'late',
      inputs: { gain: 0.9, gainUncertainty: 0.01 },
      thresholds: {
        alert: { effective: 3 / 0.9 },
        danger: { effective: 5 / 0.9, low: 5 / 0.9 / 1.01, high: 5 / 0.9 / 0.99, panel: 4.4 },
      },
      findings: ['alert-late @ Monitor!C3', 'danger-late @ Monitor!D3', 'monitor-gain-off @ Channels!C3'],
    },
    {
      tag: 'F',
      verdict: 'early',
      thresholds: { alert: { effective: 3 / 1.1 }, danger: { effective: 5 / 1.1, verdict: 'early' } },
      findings: ['alert-early @ Monitor!C7', 'danger-early @ Monitor!D7', 'monitor-gain-off @ Monitor!E7'],
    },
    { tag: 'C', verdict: 'incomplete', findings: ['tables-contradict @ Channels!C4'] },
    { tag: 'D', verdict: 'incomplete', findings: ['value-out-of-range @ Monitor!E5'] },
    { tag: 'E', verdict: 'incomplete', findings: ['value-out-of-range @ Channels!C6'] },
  ],
  says: [
    /The monitor gain is 0\.9 at Channels!C4 and 0\.95 at Monitor!E4/u,
    /0\.49 is outside its physical range: it must be 0\.5 or more/u,
    /2\.1 is outside its physical range: it must be 2 or less/u,
  ],
};
