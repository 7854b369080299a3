import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';
import { gaps, rowsOf, straight } from '../../recordSheets.ts';

const header = ['Tag', 'Measured sensitivity (mV/mil)', 'Gap voltage (V)'];
const [ofA, ofB, ofC] = [160, 190, 210].map((sensitivity) => straight(sensitivity, gaps(20, 80, 15)));

export const golden: GoldenCase = {
  because:
    'By hand, straight records through zero: 5·200/K mil, and U/K is the gap, 8/0.16 = 9.5/0.19 = 10.5/0.21 = 50 mil. Each table ends where a record begins below it, right below its last row or not; below its header repeated the list goes on, and its rows with blank rows between are all there.',
  book: book([
    'All on one sheet',
    [
      header,
      ['A', 160, -8],
      [],
      ['B', 190, -9.5],
      ['A'],
      ['Gap (mil)', 'Output (V)'],
      ...ofA!,
      ['Average (mV/mil)', 160],
      [],
      header,
      ['C', 210, -10.5],
      [],
      ['Workshop'],
      ['Tag', 'B'],
      ['Date', '2025-03-14'],
      ['Gap', 'Volts'],
      ['mil', 'V'],
      ...ofB!,
      [],
      ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)'],
      ['A', 200, 3, 5],
      ['B', 200, 3, 5],
      ['C', 200, 3, 5],
      ['Tag', 'Gap (mil)', 'Output (V)'],
      ...rowsOf(['C'], ofC!),
    ],
  ]),
  channels: [
    {
      tag: 'A',
      verdict: 'late',
      findings: [
        'alert-late @ All on one sheet!C29',
        'danger-late @ All on one sheet!D29',
        'record-point-left-out @ All on one sheet!A12',
      ],
      record: { row: 7, average: 160, operatingGap: 50, gapUnit: 'mil' },
      onCurve: { 'alert ×1': 3.75, 'danger ×1': 6.25 },
    },
    {
      tag: 'B',
      verdict: 'within',
      record: { row: 22, average: 190, operatingGap: 50 },
      onCurve: { 'alert ×1': 600 / 190, 'danger ×1': 1000 / 190 },
    },
    {
      tag: 'C',
      verdict: 'within',
      record: { row: 33, average: 210, operatingGap: 50 },
      onCurve: { 'alert ×1': 600 / 210, 'danger ×1': 1000 / 210 },
    },
  ],
  problems: ['header-repeated @ All on one sheet!A14'],
};
