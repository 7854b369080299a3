import { measured } from '../../oracle/plainChannel.ts';
import { facts, pair, type CaseTwo } from '../caseTwo.ts';

const axial = { kind: 'axial', alert: 15, danger: 20, zeroConfigured: -10, direction: 'toward' } as const;

export const judged: CaseTwo = {
  because:
    'Either table may hold any column. By hand: danger 5 on a full scale of 4 mil cannot act; at −2.4 V there is room for 2·0.4 V, less than 5·0.2 = 1 V and more than 3·0.2 V; 5 mil acts beyond a limit of 4.9 mil; the position is within at both zeros −10 V (−10 + 20·0.2 = −6 V). The one in bypass is counted apart.',
  sheets: pair(
    [
      [
        ...['Tag', 'Machine', 'Measured sensitivity (mV/mil)', 'Measured zero voltage (V)'],
        ...['Positive direction', 'Full scale (mil)', 'Bypass'],
      ],
      ['B-1', 'Pump', 200, null, null, null, 'yes'],
      ['F-1', 'Pump', 200, null, null, 4, null],
      ['G-1', 'Pump', 200, null, null, null, null],
      ['L-1', 'Pump', 200, null, null, null, null],
      ['K-1', 'Pump', 200, -10, 'toward', null, 'no'],
    ],
    [
      [
        ...['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)', 'Gap voltage (V)'],
        ...['Limit (mil)', 'Kind', 'Configured zero voltage (V)'],
      ],
      ['B-1', 200, 3, 5, null, null, 'radial', null],
      ['F-1', 200, 3, 5, null, null, 'radial', null],
      ['G-1', 200, 3, 5, -2.4, null, 'radial', null],
      ['L-1', 200, 3, 5, null, 4.9, 'radial', null],
      ['K-1', 200, 15, 20, null, null, 'axial', -10],
    ],
  ),
  facts: facts(
    { tag: 'B-1', bypass: true },
    { tag: 'F-1', fullScale: 4 },
    { tag: 'G-1', ...measured(200, { gapVoltage: -2.4 }) },
    { tag: 'L-1', limit: 4.9 },
    { tag: 'K-1', ...axial, ...measured(200, { zero: -10 }) },
  ),
  channels: {
    'B-1': { verdict: 'within', inBypass: true },
    'F-1': {
      verdict: 'unreachable',
      thresholds: { alert: { verdict: 'within' }, danger: { verdict: 'unreachable' } },
    },
    'G-1': {
      verdict: 'unreachable',
      thresholds: { alert: { verdict: 'within' }, danger: { verdict: 'unreachable' } },
    },
    'L-1': { verdict: 'within' },
    'K-1': { verdict: 'within', thresholds: { danger: { effective: 20 } } },
  },
  critical: ['Pump / B-1', 'Pump / F-1', 'Pump / G-1', 'Pump / L-1'],
  attention: [{ severity: 'critical', tag: 'L-1', threshold: 'danger', set: 5, real: 5, limit: 4.9 }],
  summary: { channels: 5, within: 2, unreachable: 2, inBypass: 1, notRead: 0 },
};
