import { measured } from '../../oracle/plainChannel.ts';
import { facts, pair, type CaseTwo } from '../caseTwo.ts';

export const judged: CaseTwo = {
  because:
    'A second list and its settings, of unit 2, fit no table by their headers (one letter is missing), but by their other words and their units they are both: the channel in them, 5·200/160 = 6.25 mil, is late.',
  sheets: [
    ...pair(
      [
        ['Tag', 'Machine', 'Measured sensitivity (mV/mil)'],
        ['V-1', 'Pump', 200],
      ],
      [
        ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)'],
        ['V-1', 200, 3, 5],
      ],
    ),
    {
      name: 'Channels 2',
      rows: [
        ['Tag', 'Machine', 'Measured sensitivty (mV/mil)'],
        ['V-2', 'Fan', 160],
      ],
    },
    {
      name: 'Monitor 2',
      rows: [
        ['Tag', 'Configured sensitivty (mV/mil)', 'Alert (mil)', 'Danger (mil)'],
        ['V-2', 200, 3, 5],
      ],
    },
  ],
  facts: facts({}, { tag: 'V-2', machine: 'Fan', ...measured(160) }),
  notRead: [],
  channels: { 'V-1': { verdict: 'within' }, 'V-2': { verdict: 'late' } },
  critical: ['Fan / V-2'],
};
