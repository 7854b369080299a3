import { measured } from '../../oracle/plainChannel.ts';
import { facts, pair, type CaseTwo } from '../caseTwo.ts';

const axial = { kind: 'axial', alert: 10, danger: 20, zeroConfigured: -10, direction: 'toward' } as const;

export const judged: CaseTwo = {
  because:
    'By hand, V0m + s·T·Km with both zeros −10 V and 200 mV/mil: danger 20 mil is −6 V toward the probe and −14 V away from it; alert 10 mil −8 and −12 V. A fault limit of −7 V is met before −6 V; with the direction not given both ways are looked at, and −14 V lies beyond −13 V. Toward the probe −13 V does not matter.',
  sheets: pair(
    [
      [
        ...['Tag', 'Machine', 'Kind', 'Measured sensitivity (mV/mil)', 'Measured zero voltage (V)'],
        'Positive direction',
      ],
      ['high', 'Pump', 'axial', 200, -10, 'toward'],
      ['either', 'Pump', 'axial', 200, -10, null],
      ['low', 'Pump', 'axial', 200, -10, 'toward'],
    ],
    [
      [
        ...['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)'],
        ...['Configured zero voltage (V)', 'Fault limit high (V)', 'Fault limit low (V)'],
      ],
      ['high', 200, 10, 20, -10, -7, -18],
      ['either', 200, 10, 20, -10, -2, -13],
      ['low', 200, 10, 20, -10, -2, -13],
    ],
  ),
  facts: facts(
    { tag: 'high', ...axial, faultHigh: -7, faultLow: -18, ...measured(200, { zero: -10 }) },
    {
      tag: 'either',
      ...axial,
      direction: null,
      faultHigh: -2,
      faultLow: -13,
      ...measured(200, { zero: -10 }),
    },
    { tag: 'low', ...axial, faultHigh: -2, faultLow: -13, ...measured(200, { zero: -10 }) },
  ),
  channels: {
    high: {
      verdict: 'unreachable',
      thresholds: { alert: { verdict: 'within' }, danger: { verdict: 'unreachable', interimSetpoint: null } },
    },
    either: {
      verdict: 'unreachable',
      thresholds: { alert: { verdict: 'within' }, danger: { verdict: 'unreachable' } },
    },
    low: { verdict: 'within' },
  },
  critical: ['Pump / either', 'Pump / high'],
};
