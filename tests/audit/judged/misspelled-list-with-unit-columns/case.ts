import { facts, pair, type CaseTwo } from '../caseTwo.ts';

export const judged: CaseTwo = {
  because:
    'A further list under misspelled headers is left unread, and said once: its row with the unit mV/(mm/s) in two columns of their own is a row of values, not a second row of headers.',
  sheets: [
    ...pair(
      [
        ['Tag', 'Machine', 'Measured sensitivity (mV/mil)'],
        ['V-1', 'Pump', 200],
      ],
      [
        ['Tag', 'Configured sensitivity (mV/mil)', 'Danger (mil)', 'Alert (mil)'],
        ['V-1', 200, 5, 3],
      ],
    ),
    {
      name: 'Further channels',
      rows: [
        ['Tag', 'Measured sensitivty', 'Unit', 'Runout sensitivty', 'Runout unit', 'Batch', 'Machine'],
        ['V-9', 3.6, 'mV/(mm/s)', 3.7, 'mV/(mm/s)', 'lot 1', 'Fan'],
        ['V-8', 4.1, 'mV/(mm/s)', 3.7, 'mV/(mm/s)', 'lot 1', 'Fan'],
      ],
    },
  ],
  facts: facts({}),
  notRead: [
    {
      what: 'sheet',
      text: 'Further channels',
      looksLike: 'a list of channels',
      severity: 'critical',
      sheet: 'Further channels',
    },
  ],
  channels: { 'V-1': { verdict: 'within' } },
  critical: ['not read'],
  summary: { within: 1, notRead: 1 },
};
