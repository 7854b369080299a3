import { facts, pair, type CaseTwo } from '../caseTwo.ts';

export const judged: CaseTwo = {
  because:
    'The headers say nothing, but their values do: 160 mV/mil is a sensitivity (5·200/160 = 6.25 mil, late, if it were the measured one) and 9 mil a level. A cable of 5 m, a date and a remark in words are neither.',
  sheets: pair(
    [
      ['Tag', 'Machine', 'Measured sensitivity (mV/mil)', 'Maker', 'Cable', 'Shaft'],
      ['V-1', 'Pump', 200, '160 mV/mil', '5 m', '250 mm'],
    ],
    [
      ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)', 'Foo', 'Said', 'Seen'],
      ['V-1', 200, 3, 5, '9 mil', 'we saw 4 mil once', '2025-03-14'],
    ],
  ),
  facts: facts({}),
  notRead: [
    { what: 'column', text: 'Maker', looksLike: 'a sensitivity', severity: 'critical', sheet: 'Channels' },
    { what: 'column', text: 'Foo', looksLike: 'a level', severity: 'warning', sheet: 'Monitor' },
  ],
  channels: { 'V-1': { verdict: 'within', inBypass: false } },
  critical: ['not read'],
  summary: { within: 1, notRead: 2 },
};
