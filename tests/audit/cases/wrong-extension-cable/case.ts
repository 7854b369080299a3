import type { GoldenCase } from '../../golden.ts';
import { oneChannel } from '../../book.ts';

export const golden: GoldenCase = {
  because:
    'By hand: 5 mil × 200 mV/mil = 1000 mV, which a chain of 160 mV/mil gives at 1000/160 = 6.25 mil, 25 % late though the ' +
    'sensitivity is 20 % low; between 1000/(160·1.03) and 1000/(160·0.97) with U = 3 %. At 5 mil it shows 800/200 = 4 mil, or 4·0.97 = 3.88, down to 3.8 in steps of 0.1; at 3 mil 2.328, down to 2.3. ' +
    'Both readings low: too much cable (common practice, no source). Gap −8 V in −2 to −18 V: 2·6 V/0.16 = 75 mil of reach.',
  book: oneChannel({
    measured: 160,
    channel: { 'Uncertainty (%)': 3, 'Gap voltage (V)': -8, 'Reference gap voltage (V)': -10 },
    settings: { 'Resolution (mil)': 0.1 },
  }),
  channels: [
    {
      tag: 'V-1',
      verdict: 'late',
      is: { kind: 'radial', unit: 'mil', detection: 'p-p' },
      sensitivity: {
        configured: 200,
        measured: 160,
        unit: 'mV/mil',
        error: -0.2,
        uncertainty: 0.03,
        coverage: 2,
      },
      inputs: { linearReach: 75, gapVoltage: -8, resolution: 0.1 },
      thresholds: {
        alert: {
          setpoint: 3,
          effective: 3.75,
          shift: 0.75,
          shiftFraction: 0.25,
          verdict: 'late',
          panel: 2.3,
          interimSetpoint: 2.3,
        },
        danger: {
          setpoint: 5,
          multiplier: 1,
          effective: 6.25,
          low: 1000 / 164.8,
          high: 1000 / 155.2,
          shift: 1.25,
          shiftFraction: 0.25,
          verdict: 'late',
          indicatedAtSetpoint: 4,
          panel: 3.8,
          interimSetpoint: 3.8,
          probabilityBeyondLimit: null,
          zone: null,
          daysLate: null,
        },
      },
      findings: [
        'alert-late @ Monitor!C2',
        'danger-late @ Monitor!D2',
        'readings-point-to-a-cause @ Channels!E2',
      ],
    },
  ],
  summary: { channels: 1, late: 1, within: 0 },
  says: [/too much cable/],
};
