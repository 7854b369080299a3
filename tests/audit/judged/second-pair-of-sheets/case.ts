import { facts, pair, type CaseTwo } from '../caseTwo.ts';

export const judged: CaseTwo = {
  because:
    'A second list and its settings, of unit 2, fit no table by their headers (one letter is missing) and look like both: each is named. The channel in them, 5·200/160 = 6.25 mil, is late and not audited.',
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
  facts: facts({}),
  notRead: [
    {
      what: 'table',
      text: 'Channels 2',
      looksLike: 'channel list',
      severity: 'critical',
      sheet: 'Channels 2',
    },
    {
      what: 'table',
      text: 'Monitor 2',
      looksLike: 'monitor settings',
      severity: 'critical',
      sheet: 'Monitor 2',
    },
  ],
  channels: { 'V-1': { verdict: 'within' } },
  critical: ['not read'],
};
