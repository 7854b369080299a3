import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

export const golden: GoldenCase = {
  because:
    'A position is a steady voltage, V0c + s·m·S·Kc. By hand toward the probe about −8 V at 200 mV/mil: danger 20 mil is −4 V, beyond a fault limit of −5 V, its alert of 10 mil −6 V; counter danger 15 mil is −11 V and while the multiplier of 3 is on −17 V, beyond one of −16.6 V. The one fault limit that is given counts, and so it does where the zero was not measured again: the monitor needs no real zero to mark a channel faulty.',
  book: book(
    [
      'Channels',
      [
        ['Tag', 'Kind', 'Measured sensitivity (mV/mil)', 'Measured zero voltage (V)', 'Positive direction'],
        ['high', 'axial', 200, -8, 'toward'],
        ['low', 'axial', 200, -8, 'toward'],
        ['no zero', 'axial', 200, null, 'toward'],
      ],
    ],
    [
      'Monitor',
      [
        [
          'Tag',
          'Configured sensitivity (mV/mil)',
          'Alert (mil)',
          'Danger (mil)',
          'Configured zero voltage (V)',
          'Counter danger (mil)',
          'Set-point multiplier',
          'Fault limit high (V)',
          'Fault limit low (V)',
        ],
        ['high', 200, 10, 20, -8, null, null, -5, null],
        ['low', 200, 3, 5, -8, 15, 3, null, -16.6],
        ['no zero', 200, 10, 20, -8, null, null, -5, null],
      ],
    ],
  ),
  channels: [
    {
      tag: 'high',
      verdict: 'unreachable',
      inputs: { faultLimits: { near: -5, far: null } },
      thresholds: {
        alert: { verdict: 'within' },
        danger: { effective: 20, verdict: 'unreachable', unreachable: ['outside the fault limits'] },
      },
      findings: ['danger-outside-fault-limits @ Monitor!D2'],
    },
    {
      tag: 'no zero',
      verdict: 'unreachable',
      thresholds: {
        alert: { effective: null, verdict: 'incomplete' },
        danger: { effective: null, verdict: 'unreachable', unreachable: ['outside the fault limits'] },
      },
      findings: ['danger-outside-fault-limits @ Monitor!D4', 'zero-voltage-missing @ Channels!D4'],
    },
    {
      tag: 'low',
      verdict: 'unreachable',
      thresholds: {
        alert: { verdict: 'within' },
        danger: { verdict: 'within' },
        'counter danger': { effective: -15, verdict: 'within' },
        'alert ×3': { verdict: 'within' },
        'danger ×3': { verdict: 'within' },
        'counter danger ×3': {
          effective: -45,
          verdict: 'unreachable',
          unreachable: ['outside the fault limits'],
        },
      },
      findings: ['counter-danger-multiplied-outside-fault-limits @ Monitor!G3'],
    },
  ],
  says: [/−4 V, outside the fault limit of −5 V: the monitor marks the channel faulty before it trips/],
};
