import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

export const golden: GoldenCase = {
  because:
    'By hand. R: as found 180 ± 3 %; as left 192 without an uncertainty of its own, so that of the method of measuring serves: 0.96·0.97 = 0.931 to 0.96·1.03 straddles 0.95. Gap as found −2.45 V: 2·0.45/0.18 = 5 mil as found; as left 2·0.45/0.192 = 4.6875, less than the danger’s 5·200/192 = 5.20833. The reading of 2 mil is one of now: 2·200/192 = 2.08333 mil really, 3.125 − 2.08333 = 1.04167 mil below the alert. A: found at 160 with its zero at −9 V it acted at (20·200 − 1000)/160 = 18.75 mil, early; its as-left gap voltage is no zero, so nothing is known of where it acts now. Z: the same with its zero measured again at −10 V: 20·200/200 = 20 mil. K: the header’s coverage factor of 3 is that of the as-left uncertainty, 0.03·2/3 = 0.02 at k = 2: u = 0.02·200/2 = 2 mV/mil, P = Φ((5·200/5 − 200)/2) = Φ(0) = 0.5, and 5/0.98 = 5.10 mil is beyond the limit of 5.',
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
          'As-left zero voltage (V)',
        ],
        ['R-1', null, 180, 3, -2.45, null, null, null, 2, 192, null, null, null],
        ['A-1', 'axial', 160, null, null, -9, 'toward', null, null, 200, -10, null, null],
        ['K-1', null, 200, null, null, null, null, 5, null, 200, null, 3, null],
        ['Z-1', 'axial', 160, null, null, -9, 'toward', null, null, 200, null, null, -10],
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
        ['Z-1', 200, 10, 20, -10],
      ],
    ],
  ),
  channels: [
    {
      tag: 'R-1',
      verdict: 'unreachable',
      findings: [
        'alert-undetermined @ Monitor!C2',
        'danger-out-of-linear-reach @ Monitor!D2',
        'as-left-uncertainty-missing @ Channels!L2',
        'as-left-gap-voltage-missing @ Channels!K2',
      ],
      inputs: { gapVoltage: -2.45, linearReach: 0.9 / 0.192, realReading: 400 / 192 },
      sensitivity: { measured: 192, error: -0.04, uncertainty: 0.03, coverage: 2 },
      thresholds: {
        alert: {
          effective: 600 / 192,
          low: 600 / (192 * 1.03),
          high: 600 / (192 * 0.97),
          verdict: 'undetermined',
          change: 'now undetermined',
          headroom: 200 / 192,
        },
        danger: { effective: 1000 / 192, verdict: 'unreachable', change: 'still unreachable' },
      },
      asFound: { verdict: 'unreachable', linearReach: 5 },
      asFoundThresholds: { alert: { verdict: 'late' }, danger: { verdict: 'unreachable' } },
    },
    {
      tag: 'A-1',
      verdict: 'incomplete',
      findings: ['as-left-zero-not-measured @ Channels!M3'],
      inputs: { gapVoltage: -10, linearReach: null, zeroMeasured: null },
      thresholds: {
        alert: { effective: null, panel: null, change: 'not judged' },
        danger: {
          effective: null,
          panel: null,
          change: 'not judged',
          obstacles: ['the zero voltage was not measured again'],
        },
      },
      asFound: { verdict: 'early', zeroMeasured: -9 },
      asFoundThresholds: { alert: { effective: 6.25 }, danger: { effective: 18.75 } },
    },
    {
      tag: 'K-1',
      verdict: 'within',
      findings: ['danger-may-be-beyond-limit @ Channels!H4'],
      sensitivity: { uncertainty: 0.02, coverage: 2 },
      thresholds: {
        alert: {},
        danger: {
          high: 5 / 0.98,
          beyondLimit: 'may',
          probabilityBeyondLimit: 0.5,
          panel: 4.9,
          change: 'unchanged',
        },
      },
    },
    {
      tag: 'Z-1',
      verdict: 'within',
      findings: ['alert-as-left-cured @ Channels!J5', 'danger-as-left-cured @ Channels!J5'],
      inputs: { zeroMeasured: -10 },
      thresholds: {
        alert: { effective: 10, change: 'corrected' },
        danger: { effective: 20, change: 'corrected' },
      },
      asFound: { verdict: 'early', zeroMeasured: -9 },
    },
  ],
  attention: [
    'critical unreachable R-1 danger',
    'critical may-be-beyond-limit K-1 danger',
    'critical incomplete A-1 danger',
    'warning undetermined R-1 alert',
  ],
  summary: { unreachable: 1, incomplete: 1, within: 2, asLeft: 4, corrected: 1 },
};
