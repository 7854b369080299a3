import type { GoldenCase } from '../../golden.ts';
import { oneChannel } from '../../book.ts';

export const golden: GoldenCase = {
  because:
    'By hand, V0 ± S·Kc/2: at −17.6 V, 5 mil × 200 mV/mil swing ±0.5 V to −18.1 V, past the fault limit of −18 V; 3 mil ±0.3 V to −17.9 V are inside; 3 × 3 mil reach −18.5 V. Linear to −20 V by the policy: 2·2.4 V/0.2 = 24 mil. A caution only (common practice, no source).',
  book: oneChannel({
    channel: { 'Gap voltage (V)': -17.6 },
    settings: { 'Fault limit high (V)': -1, 'Fault limit low (V)': -18, 'Set-point multiplier': 3 },
  }),
  policy: { linearVolts: { near: -2, far: -20 } },
  channels: [
    {
      tag: 'V-1',
      verdict: 'within',
      inputs: { linearReach: 24 },
      findings: [
        'danger-swing-leaves-fault-limits @ Monitor!F2',
        'alert-swing-leaves-fault-limits @ Monitor!F2',
        'danger-swing-leaves-fault-limits @ Monitor!F2',
      ],
    },
  ],
};
