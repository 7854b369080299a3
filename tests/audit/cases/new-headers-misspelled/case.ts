import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

export const golden: GoldenCase = {
  because:
    'A gain of 0.9 under “Moniter gain” would make danger 11 % late, a lower loop end or an uncertain zero move it too: what nearly spells one of these is said as not read, and critical. What is shared and a runout change no verdict: a warning.',
  book: book(
    [
      'Channels',
      [
        [
          'Tag',
          'Measured sensitivity (mV/mil)',
          'Zero voltage uncertanity (V)',
          'Loop curent at 0 % (mA)',
          'Shared uncertanty (%)',
          'Runout amplitud (mil)',
        ],
        ['A', 200, 0.1, 4.4, 1, 0.5],
      ],
    ],
    [
      'Monitor',
      [
        ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)', 'Moniter gain'],
        ['A', 200, 3, 5, 0.9],
      ],
    ],
  ),
  channels: [{ tag: 'A', verdict: 'within', thresholds: { alert: {}, danger: { effective: 5 } } }],
  notRead: [
    'column zero voltage uncertainty @ Channels!C1',
    'column loop current at 0 % @ Channels!D1',
    'column shared uncertainty @ Channels!E1',
    'column runout amplitude @ Channels!F1',
    'column monitor gain @ Monitor!E1',
  ],
  attention: [
    'critical not-read',
    'critical not-read',
    'critical not-read',
    'warning not-read',
    'warning not-read',
  ],
};
