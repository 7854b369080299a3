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
    'By hand: from 50 mil the voltage falls by 0.1 V/mil, before by 0.2, so a swing T about it gives (0.2 + 0.1)·T/2 = 0.15·T; the setpoint of 5 mil at 200 mV/mil is 1 V, T = 6.667 mil, a third later than the 5 mil of 200 mV/mil. The line through all points has 150 mV/mil, by symmetry.',
  policy: { curve: 'linear' },
  book: book(...sheets, ['Records', [['Tag', 'Gap (mil)', 'Output (V)'], ...rowsOf(['V-1'], bent)]]),
  channels: [
    {
      tag: 'V-1',
      verdict: 'within',
      findings: [
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
