import type { GoldenCase } from '../../golden.ts';
import { ErrorCell } from '../../../../src/cells/cell.ts';
import { book, oneChannel, sheet } from '../../book.ts';

const { sheets } = oneChannel({});

export const golden: GoldenCase = {
  because:
    'By the reading rules: each row of the history lacks or spoils one thing and is said with its cell; a number written as ' +
    'text counts; an uncertainty of 100 % or more can’t be one, and only it is left out.',
  book: book(
    ...sheets,
    sheet(
      'History',
      [
        ['Tag', 'Date', 'Sensitivity', 'Sensitivity unit', 'Uncertainty (%)'],
        [null, '2020-01-01', 200, 'mV/mil', null],
        ['V-1', null, 200, 'mV/mil', null],
        ['V-1', '03/04/2020', 200, 'mV/mil', null],
        ['V-1', '2020-01-05', null, 'mV/mil', null],
        ['V-1', '2020-01-06', 'about 200', 'mV/mil', null],
        ['V-1', '2020-01-07', -200, 'mV/mil', null],
        ['V-1', '2020-01-08', 200, null, null],
        ['V-1', '2026-01-02', 200, 'mV/mil', null],
        ['V-1', '2020-01-10', 200, 'mV/g', null],
        ['V-9', '2020-01-11', 200, 'mV/mil', null],
        ['V-1', '2020-01-12', new ErrorCell('#N/A'), 'mV/mil', null],
        ['V-1', '2020-01-13', '200', 'mV/mil', 120],
        [null, null, null, null, 3],
      ],
      { hidden: true },
    ),
  ),
  channels: [
    {
      tag: 'V-1',
      verdict: 'within',
      findings: ['history-row-left-out @ History!C10', 'drift-not-told @ Channels!C2'],
    },
  ],
  problems: [
    'history-row-left-out @ History!A2',
    'history-row-left-out @ History!B3',
    'history-row-left-out @ History!B4',
    'history-row-left-out @ History!C5',
    'history-row-left-out @ History!C6',
    'history-row-left-out @ History!C7',
    'history-row-left-out @ History!C8',
    'history-row-left-out @ History!B9',
    'history-without-channel @ History!C11',
    'history-row-left-out @ History!C12',
    'number-written-as-text @ History!C13',
    'history-row-left-out @ History!E13',
    'hidden-sheet @ History!A1',
  ],
  says: [
    /'about 200' is not a number; write the bare number, with its unit in the header\. This reading of the history was left out\./,
    /'03\/04\/2020' could be two different days/,
    /-200 mV\/mil is outside its physical range/,
    /names no unit: write it in brackets/,
    /200 mV\/g in the history can't be compared with the channel's sensitivities in mV\/mil/,
  ],
};
