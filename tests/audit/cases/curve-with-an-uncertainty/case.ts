import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';
import { gaps, rowsOf, straight } from '../../recordSheets.ts';

export const golden: GoldenCase = {
  because:
    'By hand, peak to peak = 2 × zero to peak: 2.5 mil 0-p are 5 mil p-p, 1 V at 200 mV/mil. ' +
    'S: a straight record of 160 mV/mil gives 6.25 mil p-p, 3.125 0-p, between 3.125/1.05 and 3.125/0.95; at 2.5 mil the monitor shows 2, less 5 % 1.9. ' +
    'G: −15 V lies outside the record, which ends at −14.4 V. ' +
    'E: a record of 200 mV/mil from 47 to 53 mil about −10 V, 50 mil, supports 6 mil p-p, 3 0-p: 2.9 mil are shown to act, but the upper end of 2.9/0.95 = 3.053 is not, and may be anywhere.',
  policy: { curve: 'linear' },
  book: book(
    [
      'Channels',
      [
        [
          'Tag',
          'Kind',
          'Measured sensitivity (mV/mil)',
          'Gap voltage (V)',
          'Uncertainty (%)',
          'Reading (mil 0-p)',
        ],
        ['S', 'radial', 160, -8, 5, 0],
        ['G', 'radial', 160, -15, 5, 2],
        ['E', 'radial', 200, -10, 5, 2.95],
      ],
    ],
    [
      'Monitor',
      [
        ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil 0-p)', 'Danger (mil 0-p)'],
        ['S', 200, 1.5, 2.5],
        ['G', 200, 1.5, 2.5],
        ['E', 200, 1.5, 2.9],
      ],
    ],
    [
      'Records',
      [
        ['Tag', 'Gap (mil)', 'Output (V)'],
        ...rowsOf(['S'], straight(160, gaps(10, 90, 10))),
        ...rowsOf(['G'], straight(160, gaps(10, 90, 10))),
        ...rowsOf(['E'], straight(200, gaps(47, 53, 1))),
      ],
    ],
  ),
  channels: [
    {
      tag: 'S',
      verdict: 'late',
      onCurve: { 'alert ×1': 1.875, 'danger ×1': 3.125 },
      thresholds: {
        alert: { effective: 1.875, verdict: 'late', real: 0, alreadyThere: false },
        danger: {
          effective: 3.125,
          verdict: 'late',
          panel: 1.9,
          interimSetpoint: 1.9,
          real: 0,
          alreadyThere: false,
          lines: [
            {
              by: 'listed sensitivity',
              effective: 3.125,
              low: 3.125 / 1.05,
              high: 3.125 / 0.95,
              verdict: 'late',
              why: null,
              panel: 1.9,
            },
            {
              by: 'calibration record',
              effective: 3.125,
              low: 3.125 / 1.05,
              high: 3.125 / 0.95,
              verdict: 'late',
              why: null,
              panel: 1.9,
            },
          ],
        },
      },
      findings: ['alert-late @ Monitor!C2', 'danger-late @ Monitor!D2'],
    },
    {
      tag: 'G',
      verdict: 'late',
      thresholds: {
        alert: { effective: 1.875, verdict: 'late', interimSetpoint: null },
        danger: {
          effective: 3.125,
          verdict: 'late',
          governedBy: 'listed sensitivity',
          panel: null,
          interimSetpoint: null,
          real: 2.5,
          alreadyThere: true,
          lines: [
            {
              by: 'listed sensitivity',
              effective: 3.125,
              low: 3.125 / 1.05,
              high: 3.125 / 0.95,
              verdict: 'late',
              why: null,
              panel: 1.9,
            },
            {
              by: 'calibration record',
              effective: null,
              low: null,
              high: null,
              verdict: 'undetermined',
              why: 'the gap voltage lies outside the record',
              panel: null,
            },
          ],
        },
      },
      findings: [
        'alert-late @ Monitor!C3',
        'danger-late @ Monitor!D3',
        'alert-curve-falls-short @ Records!B11',
        'danger-curve-falls-short @ Records!B11',
        'alert-has-no-interim-setpoint @ Monitor!A3',
        'danger-has-no-interim-setpoint @ Monitor!A3',
        'gap-outside-record @ Records!B11',
      ],
    },
    {
      tag: 'E',
      verdict: 'undetermined',
      onCurve: { 'alert ×1': 1.5, 'danger ×1': 2.9 },
      thresholds: {
        alert: { effective: 1.5, verdict: 'within', alreadyThere: false },
        danger: {
          effective: 2.9,
          low: 2.9 / 1.05,
          high: null,
          verdict: 'undetermined',
          governedBy: 'calibration record',
          interimSetpoint: null,
          real: 2.95,
          alreadyThere: false,
        },
      },
      findings: ['danger-undetermined @ Monitor!D4'],
    },
  ],
};
