import type { GoldenCase } from '../../golden.ts';
import { book, oneChannel } from '../../book.ts';
import { gaps, rowsOf, straight } from '../../recordSheets.ts';

const { sheets } = oneChannel({ channel: { 'Gap voltage (V)': -2.4 } });

export const golden: GoldenCase = {
  because:
    'By hand: −2.4 V at 200 mV/mil is 12 mil; a record from 10 mil on shows a swing of 2·2 = 4 mil, indicated as 4 mil at the configured 200 mV/mil. The alert of 3 mil lies inside, the danger of 5 mil does not.',
  book: book(...sheets, [
    'Records',
    [['Tag', 'Gap (mil)', 'Output (V)'], ...rowsOf(['V-1'], straight(200, gaps(10, 30, 5)))],
  ]),
  channels: [
    {
      tag: 'V-1',
      verdict: 'unreachable',
      findings: ['danger-out-of-linear-reach @ Monitor!D2', 'danger-curve-falls-short @ Records!B2'],
      record: { operatingGap: 12, straightPart: { from: 10, to: 30 } },
      onCurve: { 'alert ×1': 3, 'danger ×1': [4] },
      inputs: { linearReach: 4 },
    },
  ],
  says: [/supports indications up to 4 mil only/],
};
