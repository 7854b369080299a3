import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';
import { gaps, rowsOf, straight } from '../../recordSheets.ts';

export const golden: GoldenCase = {
  because:
    'By hand: a straight record of 160 mV/mil acts like its one sensitivity, 5·200/160 = 6.25 mil; −8 V is 50 mil, from which 10 to 90 mil leave 2·40 = 80 mil. Metric: 8 mV/µm is 203.2 mV/mil; 100 µm at 7.874/8. As found goes before as left, the lower sensitivity before the higher; as left V-1 is 200 mV/mil and −8 V 40 mil, which leaves 2·30 = 60 mil.',
  book: book(
    [
      'Channels',
      [
        ['Tag', 'Measured sensitivity (mV/mil)', 'Gap voltage (V)'],
        ['V-1', 160, -8],
        ['V-2', 203.2, -8],
        ['V-3', 200, -10],
      ],
    ],
    [
      'Monitor',
      [
        ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)'],
        ['V-1', 200, 3, 5],
        ['V-2', 200, 3, 5],
        ['V-3', 200, 3, 5],
      ],
    ],
    [
      'Records',
      [
        ['Probe records'],
        ['Tag no.', 'Series', 'Temperature', 'Gap', 'Output'],
        [null, null, null, 'mil', 'V'],
        ...rowsOf(['v-1', 'As Left', null], straight(200, gaps(10, 90, 10))),
        ...rowsOf([' V-1 ', 'as-found', null], straight(160, gaps(10, 90, 10))),
        ...rowsOf(['V-3', null, 90], straight(196, gaps(10, 90, 10))),
        ...rowsOf(['V-3', null, 20], straight(200, gaps(10, 90, 10))),
      ],
    ],
    [
      'Metric records',
      [
        ['Tag', 'Gap (µm)', 'Output (mV)'],
        ...rowsOf(['V-2'], straight(8, gaps(250, 2250, 250))).map(([tag, gap, volts]) => [
          tag!,
          gap!,
          1000 * (volts as number),
        ]),
      ],
    ],
  ),
  channels: [
    {
      tag: 'V-3',
      verdict: 'within',
      findings: ['several-records @ Records!D22'],
      record: { temperature: '90', average: 196, operatingGap: 10 / 0.196 },
      onCurve: { 'alert ×1': 600 / 196, 'danger ×1': 1000 / 196 },
    },
    {
      tag: 'V-2',
      verdict: 'within',
      record: { gapUnit: 'µm', average: 8, operatingGap: 1000, linearRange: { from: 250, to: 2250 } },
      onCurve: { 'alert ×1': (3 * 200) / 203.2, 'danger ×1': (5 * 200) / 203.2 },
      inputs: { linearReach: (2 * 750) / 25.4 },
    },
    {
      tag: 'V-1',
      verdict: 'within',
      findings: [
        'several-records @ Records!D4',
        'as-left-sensitivity-from-record @ Channels!A2',
        'as-left-gap-voltage-missing @ Channels!A2',
        'alert-as-left-cured @ Channels!A2',
        'danger-as-left-cured @ Channels!A2',
      ],
      sensitivity: { measured: 200, from: 'calibration record' },
      record: {
        series: 'as left',
        row: 4,
        gapUnit: 'mil',
        average: 200,
        intercept: 0,
        operatingGap: 40,
        rated: 200,
        linearRange: { from: 10, to: 90 },
        straightPart: { from: 10, to: 90 },
        span: { from: 10, to: 90 },
      },
      onCurve: { 'alert ×1': 3, 'danger ×1': 5 },
      inputs: { linearReach: 60 },
      asFound: {
        verdict: 'late',
        linearReach: 80,
        record: { row: 13, average: 160, operatingGap: 50, linearRange: null },
      },
    },
  ],
};
