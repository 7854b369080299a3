import { measured } from '../../oracle/plainChannel.ts';
import { facts, pair, type CaseTwo } from '../caseTwo.ts';

const brg = { group: 'Brg 1', voting: '1oo2' } as const;

export const judged: CaseTwo = {
  because:
    'A group belongs to its machine. By hand: the pump has 5 mil and one in bypass, so 1oo2 acts at 5; the fan has 5·200/160 = 6.25 and 5·200/170 = 5.882, so 1oo2 acts at 5.882, later than 5.263. Pooled, all four would act at 5.',
  sheets: pair(
    [
      ['Tag', 'Machine', 'Measured sensitivity (mV/mil)'],
      ['A', 'Pump', 200],
      ['B', 'Pump', 200],
      ['C', 'Fan', 160],
      ['D', 'Fan', 170],
    ],
    [
      [
        ...['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)'],
        ...['Voting group', 'Voting', 'Bypass'],
      ],
      ['A', 200, 3, 5, 'Brg 1', '1oo2', 'no'],
      ['B', 200, 3, 5, 'Brg 1', '1oo2', 'yes'],
      ['C', 200, 3, 5, 'Brg 1', '1oo2', 'no'],
      ['D', 200, 3, 5, 'Brg 1', '1oo2', 'no'],
    ],
  ),
  facts: facts(
    { tag: 'A', ...brg },
    { tag: 'B', ...brg, bypass: true },
    { tag: 'C', machine: 'Fan', ...brg, ...measured(160) },
    { tag: 'D', machine: 'Fan', ...brg, ...measured(170) },
  ),
  channels: {
    A: { verdict: 'within' },
    B: { verdict: 'within', inBypass: true },
    C: { verdict: 'late' },
    D: { verdict: 'late' },
  },
  groups: [
    { machine: 'Pump', name: 'Brg 1', threshold: 'danger', effective: 5, canTrip: true, decidedBy: ['A'] },
    { machine: 'Pump', name: 'Brg 1', threshold: 'alert', effective: 3, decidedBy: ['A'] },
    { machine: 'Fan', name: 'Brg 1', threshold: 'danger', effective: 1000 / 170, decidedBy: ['D'] },
    { machine: 'Fan', name: 'Brg 1', threshold: 'alert', effective: 600 / 170, decidedBy: ['D'] },
  ],
  critical: ['Fan / C', 'Fan / D', 'Fan / group Brg 1 / danger ×1', 'Pump / B'],
  summary: { channels: 4, within: 1, late: 2, inBypass: 1, groupsThatCannotTrip: 0 },
};
