import { facts, pair, type CaseTwo } from '../caseTwo.ts';

const brg = { group: 'Brg', voting: '2oo2', multiplier: 3 } as const;

export const judged: CaseTwo = {
  because:
    'By hand: 2oo2 of 5 and 5 mil acts at 5. While the multiplier of 3 is on, 15 mil lies above the full scale of 10 mil of one, so that only one of two can vote: the group cannot trip. Its alert of 9 mil can.',
  sheets: pair(
    [
      ['Tag', 'Machine', 'Measured sensitivity (mV/mil)'],
      ['A', 'Pump', 200],
      ['B', 'Pump', 200],
    ],
    [
      [
        ...['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)', 'Full scale (mil)'],
        ...['Set-point multiplier', 'Voting group', 'Voting'],
      ],
      ['A', 200, 3, 5, 10, 3, 'Brg', '2oo2'],
      ['B', 200, 3, 5, 20, 3, 'Brg', '2oo2'],
    ],
  ),
  facts: facts({ tag: 'A', ...brg, fullScale: 10 }, { tag: 'B', ...brg, fullScale: 20 }),
  channels: {
    A: {
      verdict: 'unreachable',
      thresholds: { danger: { verdict: 'within' }, 'danger ×3': { verdict: 'unreachable' } },
    },
    B: { verdict: 'within', thresholds: { 'danger ×3': { effective: 15, verdict: 'within' } } },
  },
  groups: [
    { name: 'Brg', threshold: 'danger', multiplier: 1, intended: 5, effective: 5, canTrip: true },
    { name: 'Brg', threshold: 'danger', multiplier: 3, intended: 15, effective: null, canTrip: false },
    { name: 'Brg', threshold: 'alert', multiplier: 1, effective: 3 },
    { name: 'Brg', threshold: 'alert', multiplier: 3, effective: 9, canTrip: true },
  ],
  critical: ['Pump / A', 'Pump / group Brg / danger ×3'],
  summary: { groupsThatCannotTrip: 1 },
};
