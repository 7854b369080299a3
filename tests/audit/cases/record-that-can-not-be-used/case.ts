import type { GoldenCase } from '../../golden.ts';
import { book } from '../../book.ts';
import { gaps, rowsOf, straight } from '../../recordSheets.ts';

const right = straight(200, gaps(10, 50, 10));

export const golden: GoldenCase = {
  because:
    'A gap twice, two points, a word for a voltage, rising volts, rows out of order, a record of a velocity sensor, of a tag that nobody knows, without a tag, without a unit, a check that does not say how it is counted, a list with one gap a tag: each is said at its cell, none refuses the audit. A record that is there and can not be used leaves its channel incomplete.',
  book: book(
    [
      'All',
      [
        ['Tag', 'Kind', 'Measured sensitivity', 'Unit', 'Configured sensitivity', 'Alert', 'Danger', 'Unit'],
        ...['twice', 'short', 'word', 'rises', 'mixed'].map((tag) => [
          tag,
          'radial',
          200,
          'mV/mil',
          200,
          3,
          5,
          'mil',
        ]),
        ['speed', 'velocity', 100, 'mV/(in/s)', 100, 0.3, 0.5, 'in/s'],
      ],
    ],
    [
      'Records',
      [
        ['Tag', 'Gap (mil)', 'Output (V)'],
        ...rowsOf(['twice'], [...right.slice(0, 2), right[1]!, ...right.slice(2)]),
        ...rowsOf(['short'], right.slice(0, 2)),
        ...rowsOf(['word'], right.slice(0, 3)),
        ['word', 60, 'saturated'],
        ...rowsOf(['rises'], [...right, [60, -9.5]]),
        ...rowsOf(['mixed'], right.toReversed()),
        ...rowsOf(['speed'], right),
        ...rowsOf(['nobody'], right),
      ],
    ],
    [
      'Loose',
      [
        ['Gap (mil)', 'Output (V)'],
        ...right,
        [],
        [null, 20, -4],
        ['Tag', 'Gap (mil)', 'Output (V)'],
        [null, 20, -4],
      ],
    ],
    ['No unit', [['Tag', 'Gap', 'Output (V)'], ...rowsOf(['twice'], right)]],
    [
      'Shaker',
      [
        ['Tag', 'Displacement (mil)', 'Output (mV rms)'],
        ['word', 4, 283],
      ],
    ],
    [
      'Register',
      [
        ['Tag', 'Gap (mil)', 'Output (V)'],
        ['twice', 50, -10],
        ['short', 50, -10],
      ],
    ],
  ),
  channels: [
    { tag: 'twice', verdict: 'incomplete', record: null, findings: ['record-unusable @ Records!B4'] },
    { tag: 'short', verdict: 'incomplete', record: null, findings: ['record-unusable @ Records!B8'] },
    {
      tag: 'rises',
      verdict: 'incomplete',
      findings: ['record-not-falling @ Records!B14', 'record-without-gap-voltage @ Records!B14'],
      record: { average: 200, operatingGap: null, straightPart: { from: 10, to: 50 } },
      onCurve: {},
    },
    {
      tag: 'word',
      verdict: 'within',
      findings: ['record-point-left-out @ Records!C13', 'record-without-gap-voltage @ Records!B10'],
      record: { average: 200 },
    },
    {
      tag: 'mixed',
      verdict: 'within',
      findings: ['record-sorted @ Records!B20', 'record-without-gap-voltage @ Records!B20'],
      record: { average: 200 },
    },
    { tag: 'speed', verdict: 'within', record: null, findings: ['record-of-another-kind @ Records!B25'] },
  ],
  problems: [
    'record-unit-missing @ No unit!B1',
    'record-unit-missing @ Shaker!B1',
    'record-without-channel @ Records!B30',
    'record-without-tag @ Loose!A1',
    'record-without-tag @ Loose!A10',
    'records-of-one-point @ Register!A1',
  ],
};
