import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

export const golden: GoldenCase = {
  because:
    'Fieller’s interval of (S·Kc/g + s·(V0c − V0m))/Km worked out apart from this code, as the roots of its quadratic: P by hand 3700/190 = 19.474 with 50 mV and 1.5 %: 18.704 to 20.278, and later than 21 mil with Φ((3700 − 21·190)/√(50² + (21·2.85)²)) = 0.0001. Q has a gain of 0.98 known to 1 % besides. The panel reading is the setpoint whose interval ends at the 20 mil meant: 19.742, and 19.29 for Q, down to two digits.',
  book: book(
    [
      'Channels',
      [
        [
          'Tag',
          'Kind',
          'Measured sensitivity (mV/mil)',
          'Uncertainty (%)',
          'Zero voltage (V)',
          'Zero voltage uncertainty (V)',
          'Direction',
          'Limit (mil)',
        ],
        ['P', 'axial', 190, 3, -9.7, 0.1, 'toward', 21],
        ['Q', 'axial', 190, 3, -9.7, 0.1, 'toward', 21],
        ['R', 'axial', 190, 3, -9.7, 'a little', 'toward', 21],
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
          'Monitor gain',
          'Monitor gain uncertainty (%)',
        ],
        ['P', 200, 15, 20, -10, null, null],
        ['Q', 200, 15, 20, -10, 0.98, 1],
        ['R', 200, 15, 20, -10, null, null],
      ],
    ],
  ),
  channels: [
    {
      tag: 'P',
      verdict: 'undetermined',
      thresholds: {
        alert: { effective: 14.210526315789474, low: 13.545587996098577, high: 14.901066624639032 },
        danger: {
          effective: 19.47368421052631,
          low: 18.704349605177768,
          high: 20.27810302324043,
          verdict: 'undetermined',
          beyondLimit: 'no',
          probabilityBeyondLimit: 0.00010018359108237093,
          panel: 19,
        },
      },
      findings: ['alert-undetermined @ Monitor!C2', 'danger-undetermined @ Monitor!D2'],
    },
    {
      tag: 'R',
      verdict: 'undetermined',
      thresholds: {
        alert: { verdict: 'undetermined' },
        danger: { verdict: 'undetermined', low: 3700 / 190 / 1.03, high: 3700 / 190 / 0.97 },
      },
      findings: [
        'alert-undetermined @ Monitor!C4',
        'danger-undetermined @ Monitor!D4',
        'value-not-a-number @ Channels!F4',
      ],
    },
    {
      tag: 'Q',
      verdict: 'undetermined',
      inputs: { gain: 0.98, gainUncertainty: 0.01, zeroUncertainty: 0.1 },
      thresholds: {
        alert: { verdict: 'undetermined' },
        danger: {
          effective: 19.903329752953812,
          low: 19.096262439452588,
          high: 20.74625533244975,
          verdict: 'within',
          panel: 19,
        },
      },
      findings: ['alert-undetermined @ Monitor!C3'],
    },
  ],
};
