import type { GoldenCase } from '../../golden.ts';
import { book, oneChannel } from '../../book.ts';
import { gaps, rowsOf, straight } from '../../recordSheets.ts';

const { sheets } = oneChannel({ measured: null, channel: { 'Gap voltage (V)': -8 } });

export const golden: GoldenCase = {
  because: 'By hand: no sensitivity in the list, a straight record of 160 mV/mil: 5·200/160 = 6.25 mil.',
  book: book(...sheets, [
    'Records',
    [['Tag', 'Gap (mil)', 'Output (V)'], ...rowsOf(['V-1'], straight(160, gaps(10, 90, 20)))],
  ]),
  channels: [
    {
      tag: 'V-1',
      verdict: 'late',
      findings: [
        'sensitivity-from-record @ Channels!C2',
        'alert-late @ Monitor!C2',
        'danger-late @ Monitor!D2',
      ],
      sensitivity: { measured: 160, unit: 'mV/mil' },
      onCurve: { 'alert ×1': 3.75, 'danger ×1': 6.25 },
    },
  ],
};
