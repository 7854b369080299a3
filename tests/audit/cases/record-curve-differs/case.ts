import type { GoldenCase } from '../../golden.ts';
import { book, oneChannel } from '../../book.ts';
import { gaps, rowsOf } from '../../recordSheets.ts';

const bent = gaps(10, 90, 10).map((gap): [number, number] => [
  gap,
  gap <= 50 ? -0.2 * gap : -10 - 0.1 * (gap - 50),
]);
const { sheets } = oneChannel({ channel: { 'Gap voltage (V)': -10 } });

export const golden: GoldenCase = {
  because:
    'By hand: from 50 mil the voltage falls by 0.1 V/mil, before by 0.2, so a swing T about it gives (0.2 + 0.1)·T/2 = 0.15·T; the setpoint of 5 mil at 200 mV/mil is 1 V, T = 6.667 mil, a third later than the 5 mil of 200 mV/mil. The line of evidence that acts latest governs: late. At 5 mil the monitor shows 0.75 V/0.2 = 3.75 mil, down to 3.7 in two digits, at 3 mil 2.25, down to 2.2. The line through all points has 150 mV/mil, by symmetry.',
  policy: { curve: 'linear' },
  book: book(...sheets, ['Records', [['Tag', 'Gap (mil)', 'Output (V)'], ...rowsOf(['V-1'], bent)]]),
  channels: [
    {
      tag: 'V-1',
      verdict: 'late',
      thresholds: {
        alert: { effective: 4, verdict: 'late', panel: 2.2, interimSetpoint: 2.2 },
        danger: {
          effective: 20 / 3,
          shiftFraction: 1 / 3,
          verdict: 'late',
          governedBy: 'calibration record',
          indicatedAtSetpoint: 5,
          panel: 3.7,
          interimSetpoint: 3.7,
        },
      },
      findings: [
        'alert-late @ Monitor!C2',
        'danger-late @ Monitor!D2',
        'alert-curve-differs @ Records!B2',
        'danger-curve-differs @ Records!B2',
        'record-disagrees-with-list @ Records!B2',
      ],
      record: { average: 150, operatingGap: 50, straightPart: null, span: { from: 10, to: 90 } },
      onCurve: { 'alert ×1': 4, 'danger ×1': 20 / 3 },
      inputs: { linearReach: 80 },
    },
  ],
  says: [/Danger 5 mil acts at 6\.667 mil on the curve .* 33\.3 % away from the 5 mil/],
};
