import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

export const golden: GoldenCase = {
  because:
    'By hand. R: as found 180 ± 3 %; as left 192 without an uncertainty of its own: 0.96 is within 0.95 by the value alone, and no band is given (the 3 % would leave it undetermined: 0.96·0.97 = 0.931). Gap as found −2.45 V: 2·0.45/0.18 = 5 mil as found; as left 2·0.45/0.192 = 4.6875, less than the danger’s 5·200/192 = 5.20833. The reading of 2 mil is one as found and gives no headroom as left. A: the zero stays at −9 V against −10 V, as the as-left gap voltage of −10 V is none: (20·200 − 1000 mV)/200 = 15 mil. K: the header’s coverage factor of 3 is that of the as-left uncertainty: u = 0.03·200/3 = 2 mV/mil, and P = Φ((5·200/5 − 200)/2) = Φ(0) = 0.5.',
  book: book(
    [
      'Channels',
      [
        [
          'Tag',
          'Kind',
          'Measured sensitivity (mV/mil)',
          'Uncertainty (%)',
          'Gap voltage (V)',
          'Measured zero voltage (V)',
          'Positive direction',
          'Limit (mil)',
          'Present reading (mil)',
          'As-left sensitivity (mV/mil)',
          'As-left gap voltage (V)',
          'As-left uncertainty (%, k=3)',
        ],
        ['R-1', null, 180, 3, -2.45, null, null, null, 2, 192, null, null],
        ['A-1', 'axial', 160, null, null, -9, 'toward', null, null, 200, -10, null],
        ['K-1', null, 200, null, null, null, null, 5, null, 200, null, 3],
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
        ],
        ['R-1', 200, 3, 5, null],
        ['A-1', 200, 10, 20, -10],
        ['K-1', 200, 3, 5, null],
      ],
    ],
  ),
  channels: [
    {
      tag: 'R-1',
      verdict: 'unreachable',
      findings: [
        'alert-late @ Monitor!C2',
        'danger-out-of-linear-reach @ Monitor!D2',
        'as-left-uncertainty-missing @ Channels!L2',
        'as-left-gap-voltage-missing @ Channels!K2',
        'alert-as-left-cured @ Channels!J2',
        'danger-as-left-unreachable @ Channels!J2',
      ],
      asLeft: { gapVoltage: null, linearReach: 0.9 / 0.192, verdict: 'unreachable' },
      asLeftSensitivity: { measured: 192, error: -0.04, uncertainty: null, coverage: null },
      asLeftThresholds: {
        alert: { effective: 600 / 192, low: null, verdict: 'within', change: 'cured', headroom: null },
        danger: { effective: 1000 / 192, verdict: 'unreachable', change: 'still unreachable' },
      },
    },
    {
      tag: 'A-1',
      verdict: 'early',
      findings: [
        'alert-early @ Monitor!C3',
        'danger-early @ Monitor!D3',
        'as-left-zero-not-measured @ Channels!K3',
        'alert-as-left-early @ Channels!J3',
        'danger-as-left-early @ Channels!J3',
        'alert-as-left-worse @ Channels!J3',
        'danger-as-left-worse @ Channels!J3',
      ],
      thresholds: { alert: { effective: 6.25 }, danger: { effective: 18.75 } },
      asLeft: { gapVoltage: -10, linearReach: null },
      asLeftThresholds: {
        alert: { effective: 5, change: 'still early' },
        danger: { effective: 15, change: 'still early' },
      },
    },
    {
      tag: 'K-1',
      verdict: 'within',
      asLeftSensitivity: { uncertainty: 0.03, coverage: 3 },
      asLeftThresholds: { alert: {}, danger: { probabilityBeyondLimit: 0.5, change: 'unchanged' } },
    },
  ],
  summary: { asLeft: { judged: 3, cured: 0, stillLate: 1, newlyLate: 0 } },
};
