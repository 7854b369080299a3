import type { GoldenCase } from '../../golden.ts';
import { readWorkbook } from '../../../../src/hosts/file/read/workbook.ts';
import { bookParts, zip } from '../../../hosts/file/read/book.ts';

const text = (at: string, words: string) => `<c r="${at}" t="inlineStr"><is><t>${words}</t></is></c>`;
const number = (at: string, value: number) => `<c r="${at}"><v>${value}</v></c>`;
const channel = (row: number, tag: string, machine = '') =>
  `<row r="${row}">${machine && text(`A${row}`, machine)}${text(`B${row}`, tag)}${number(`C${row}`, 200)}</row>`;
const settings = (row: number, tag: string) =>
  `<row r="${row}">${text(`A${row}`, tag)}${number(`B${row}`, 200)}${number(`C${row}`, 3)}${number(`D${row}`, 5)}</row>`;

const bytes = zip(
  bookParts({
    sheets: [
      {
        name: 'Channels',
        data:
          `<row r="1">${text('A1', 'Machine')}${text('B1', 'Tag')}${text('C1', 'Measured sensitivity (mV/mil)')}</row>` +
          channel(2, 'A', 'Pump') +
          channel(3, 'B') +
          channel(4, 'C', 'Fan'),
        after: '<mergeCells count="1"><mergeCell ref="A2:A3"/></mergeCells>',
      },
      {
        name: 'Monitor',
        data:
          `<row r="1">${text('A1', 'Tag')}${text('B1', 'Configured sensitivity (mV/mil)')}${text('C1', 'Alert (mil)')}${text('D1', 'Danger (mil)')}</row>` +
          settings(2, 'A') +
          settings(3, 'B') +
          settings(4, 'C'),
      },
    ],
  }),
);

export const golden: GoldenCase = {
  because:
    'A machine written once over the merged cells of its channels is the machine of each of them, as people see it.',
  book: readWorkbook('merged.xlsx', bytes),
  channels: [
    { tag: 'A', verdict: 'within', is: { machine: 'Pump' } },
    { tag: 'B', verdict: 'within', is: { machine: 'Pump' } },
    { tag: 'C', verdict: 'within', is: { machine: 'Fan' } },
  ],
};
