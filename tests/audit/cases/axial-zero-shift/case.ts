import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';

const header = [
  'Tag',
  'Kind',
  'Measured sensitivity (mV/mil)',
  'Measured zero voltage (V)',
  'Positive direction',
];

export const golden: GoldenCase = {
  because:
    'By hand, T = (S·Kc + s·(V0c − V0m))/Km with V0c −10 V, V0m −11 V and 200 mV/mil both: the shift is s·1 V/0.2 = s·5 mil. ' +
    'Toward (s = +1): 20 → 25, 15 → 20, −20 → −15, −15 → −10; away (s = −1): 20 → 15, 15 → 10, −20 → −25, −15 → −20. ' +
    'The monitor shows (S·Km + s·(V0m − V0c))/Kc = S − s·5 at S. That is the panel level; a setpoint is offered for late ones alone. Accepted: |S|/1.05 to |S|/0.95.',
  book: book(
    ['Channels', [header, ['T', 'axial', 200, -11, 'toward'], ['A', 'thrust', 200, -11, 'Away']]],
    [
      'Monitor',
      [
        [
          'Tag',
          'Configured sensitivity (mV/mil)',
          'Alert (mil)',
          'Danger (mil)',
          'Configured zero voltage (V)',
          'Counter alert (mil)',
          'Counter danger (mil)',
        ],
        ['T', 200, 15, 20, -10, 15, 20],
        ['A', 200, 15, 20, -10, 15, 20],
      ],
    ],
  ),
  channels: [
    {
      tag: 'T',
      verdict: 'late',
      is: { kind: 'axial', detection: null },
      inputs: {
        zeroConfigured: -10,
        zeroMeasured: -11,
        direction: 'toward',
        unitsPerVolt: 1000,
        linearReach: null,
      },
      thresholds: {
        alert: { setpoint: 15, effective: 20, shift: 5, shiftFraction: 1 / 3, verdict: 'late' },
        danger: {
          setpoint: 20,
          effective: 25,
          shift: 5,
          shiftFraction: 0.25,
          verdict: 'late',
          indicatedAtSetpoint: 15,
          interimSetpoint: 15,
        },
        'counter alert': {
          setpoint: -15,
          effective: -10,
          shift: -5,
          verdict: 'early',
          panel: -20,
          interimSetpoint: null,
        },
        'counter danger': {
          setpoint: -20,
          effective: -15,
          shift: -5,
          shiftFraction: -0.25,
          verdict: 'early',
        },
      },
      findings: [
        'alert-late @ Monitor!C2',
        'danger-late @ Monitor!D2',
        'counter-alert-early @ Monitor!F2',
        'counter-danger-early @ Monitor!G2',
      ],
    },
    {
      tag: 'A',
      verdict: 'late',
      thresholds: {
        alert: { setpoint: 15, effective: 10, verdict: 'early' },
        danger: {
          setpoint: 20,
          effective: 15,
          shift: -5,
          shiftFraction: -0.25,
          verdict: 'early',
          indicatedAtSetpoint: 25,
        },
        'counter alert': { setpoint: -15, effective: -20, verdict: 'late' },
        'counter danger': {
          setpoint: -20,
          effective: -25,
          shift: 5,
          shiftFraction: 0.25,
          verdict: 'late',
          indicatedAtSetpoint: -15,
          interimSetpoint: -15,
        },
      },
      findings: [
        'alert-early @ Monitor!C3',
        'danger-early @ Monitor!D3',
        'counter-alert-late @ Monitor!F3',
        'counter-danger-late @ Monitor!G3',
      ],
    },
  ],
  problems: [],
};
