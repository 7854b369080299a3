import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';
import { gaps, rowsOf, straight } from '../../recordSheets.ts';

export const golden: GoldenCase = {
  because:
    'By hand: straight records. R: nothing read as left in the list, the record marked as left gives 200 mV/mil, 5·200/200 = 5 mil; its −8 V is 40 mil, from which 15 to 90 mil leave 2·25 = 50 mil. D: the list says 200 and the record 180 as left, 10 % apart: the list counts, and it is said; without a gap voltage the curve can’t be used. L: a record as left is not what was found, so the channel is incomplete. S: what stands in the list as left can’t be used, and the record does not stand for it: what was found counts.',
  book: book(
    [
      'Channels',
      [
        [
          'Tag',
          'Measured sensitivity (mV/mil)',
          'Gap voltage (V)',
          'As-left sensitivity (mV/mil)',
          'As-left gap voltage (V)',
        ],
        ['R-1', 160, -6.4, null, -8],
        ['D-1', 160, null, 200, null],
        ['L-1', null, null, null, null],
        ['S-1', 160, null, 'new', null],
      ],
    ],
    [
      'Monitor',
      [
        ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)'],
        ...['R-1', 'D-1', 'L-1', 'S-1'].map((tag) => [tag, 200, 3, 5]),
      ],
    ],
    [
      'Records',
      [
        ['Tag', 'Series', 'Gap (mil)', 'Output (V)'],
        ...rowsOf(['R-1', 'as left'], straight(200, gaps(15, 90, 15))),
        ...rowsOf(['D-1', 'as left'], straight(180, gaps(15, 90, 15))),
        ...rowsOf(['L-1', 'as left'], straight(200, gaps(15, 90, 15))),
        ...rowsOf(['S-1', 'as left'], straight(200, gaps(15, 90, 15))),
      ],
    ],
  ),
  channels: [
    {
      tag: 'S-1',
      verdict: 'late',
      findings: [
        'alert-late @ Monitor!C5',
        'danger-late @ Monitor!D5',
        'value-not-a-number @ Channels!D5',
        'as-left-not-judged @ Channels!D5',
      ],
      is: { state: 'as found' },
      asFound: null,
    },
    {
      tag: 'L-1',
      verdict: 'incomplete',
      findings: ['value-missing @ Channels!B4', 'as-left-not-judged @ Channels!D4'],
      asFound: null,
    },
    {
      tag: 'R-1',
      verdict: 'within',
      is: { state: 'as left' },
      findings: [
        'as-left-sensitivity-from-record @ Channels!D2',
        'alert-as-left-cured @ Channels!D2',
        'danger-as-left-cured @ Channels!D2',
      ],
      inputs: { gapVoltage: -8, linearReach: 50 },
      sensitivity: { measured: 200, uncertainty: null, from: 'calibration record' },
      record: { series: 'as left', operatingGap: 40 },
      onCurve: { 'alert ×1': 3, 'danger ×1': 5 },
      thresholds: { alert: { effective: 3 }, danger: { effective: 5, change: 'corrected' } },
      asFound: { verdict: 'late', gapVoltage: -6.4, record: null },
    },
    {
      tag: 'D-1',
      verdict: 'within',
      findings: [
        'record-disagrees-with-list @ Channels!D3',
        'record-without-gap-voltage @ Records!C8',
        'alert-as-left-cured @ Channels!D3',
        'danger-as-left-cured @ Channels!D3',
      ],
      sensitivity: { measured: 200, from: 'channel list' },
      asFound: { verdict: 'late' },
    },
  ],
  says: [/row 2 of sheet 'Records', 200 mV\/mil, was used/, /gives 180 mV\/mil, −10 % off/],
};
