import { measured } from '../../oracle/plainChannel.ts';
import { facts, pair, type CaseTwo } from '../caseTwo.ts';

export const judged: CaseTwo = {
  because:
    'A gap voltage of the wrong sign, a record of two points, a fault limit in words: the threshold cannot be better than incomplete, and worse stays worse: 5·200/160 = 6.25 mil is late. None of them at all is within, reach not judged.',
  sheets: [
    ...pair(
      [
        ['Tag', 'Machine', 'Measured sensitivity (mV/mil)', 'Gap voltage (V)'],
        ['sign', 'Pump', 200, 9.8],
        ['late', 'Pump', 160, 9.8],
        ['record', 'Pump', 200, -9.8],
        ['fault', 'Pump', 200, -9.8],
        ['bare', 'Pump', 200, null],
      ],
      [
        ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)', 'Fault limit high (V)'],
        ['sign', 200, 3, 5, null],
        ['late', 200, 3, 5, null],
        ['record', 200, 3, 5, null],
        ['fault', 200, 3, 5, 'see drawing'],
        ['bare', 200, 3, 5, null],
      ],
    ),
    {
      name: 'Probe records',
      rows: [
        ['Tag', 'Gap (mil)', 'Output (V)'],
        ['record', 40, -8],
        ['record', 50, -10],
      ],
    },
  ],
  facts: facts(
    { tag: 'sign', unusable: ['gap voltage'] },
    { tag: 'late', unusable: ['gap voltage'], ...measured(160) },
    { tag: 'record', unusable: ['calibration record'], ...measured(200, { gapVoltage: -9.8 }) },
    { tag: 'fault', unusable: ['fault limit'], ...measured(200, { gapVoltage: -9.8 }) },
    { tag: 'bare' },
  ),
  channels: {
    sign: { verdict: 'incomplete', thresholds: { danger: { effective: 5 } } },
    late: { verdict: 'late' },
    record: { verdict: 'incomplete' },
    fault: { verdict: 'incomplete' },
    bare: { verdict: 'within' },
  },
  critical: ['Pump / fault', 'Pump / late', 'Pump / record', 'Pump / sign'],
};
