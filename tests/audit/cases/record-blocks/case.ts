import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';
import { gaps, straight } from '../../recordSheets.ts';

const [left, right, below] = [160, 210, 190].map((sensitivity) => straight(sensitivity, gaps(20, 80, 15)));
const alone = straight(205, gaps(10, 70, 20));

export const golden: GoldenCase = {
  because:
    'By hand, straight records: 5·200/Km. The tag stands beside the word tag, behind it, alone above the headers, or is the name of the sheet.',
  book: book(
    [
      'Channels',
      [
        ['Tag', 'Measured sensitivity (mV/mil)', 'Gap voltage (V)'],
        ['L-1', 160, -8],
        ['R-1', 210, -10.5],
        ['B-1', 190, -9.5],
        ['A-1', 205, -8.2],
      ],
    ],
    [
      'Monitor',
      [
        ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)'],
        ...['L-1', 'R-1', 'B-1', 'A-1'].map((tag) => [tag, 200, 3, 5]),
      ],
    ],
    [
      'Sheets of the workshop',
      [
        ['As found'],
        ['Tag', 'L-1', null, 'Tag: R-1'],
        ['Gap (mil)', 'Volts', null, 'Gap (mil)', 'Volts'],
        ...left!.map((point, at) => [...point, null, ...right![at]!]),
        [],
        ['B-1'],
        ['Gap (mil)', 'Remark', 'Output (V)'],
        ...below!.map(([gap, volts]) => [gap, null, volts]),
      ],
    ],
    ['A-1', [['Micrometer reading (mil)', 'Output (V)'], ...alone]],
  ),
  channels: [
    {
      tag: 'L-1',
      verdict: 'late',
      findings: ['alert-late @ Monitor!C2', 'danger-late @ Monitor!D2'],
      record: { sheet: 'Sheets of the workshop', row: 4, average: 160, operatingGap: 50 },
      onCurve: { 'alert ×1': 3.75, 'danger ×1': 6.25 },
    },
    {
      tag: 'B-1',
      verdict: 'within',
      record: { row: 12, average: 190, operatingGap: 50 },
      onCurve: { 'alert ×1': 600 / 190, 'danger ×1': 1000 / 190 },
    },
    {
      tag: 'R-1',
      verdict: 'within',
      record: { row: 4, average: 210, operatingGap: 50 },
      onCurve: { 'alert ×1': 600 / 210, 'danger ×1': 1000 / 210 },
    },
    {
      tag: 'A-1',
      verdict: 'within',
      record: { sheet: 'A-1', row: 2, average: 205, operatingGap: 40 },
      onCurve: { 'alert ×1': 600 / 205, 'danger ×1': 1000 / 205 },
    },
  ],
};
