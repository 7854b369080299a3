import { facts, pair, type CaseTwo } from '../caseTwo.ts';

const row = (text: string, sheet: string) =>
  ({ what: 'row', text, looksLike: 'a channel without a tag', severity: 'critical', sheet }) as const;

export const judged: CaseTwo = {
  because:
    'A number written as text counts, and in a text file every number is one: a row with a danger of 5 mil, or a measured 150 mV/mil, and no tag is a channel whose danger is not known (5·200/150 = 6.67 mil would be late), so it is critical; a text alone is a remark.',
  sheets: pair(
    [
      ['Tag', 'Machine', 'Measured sensitivity (mV/mil)'],
      ['V-1', 'Pump', 200],
      ['', 'Pump', '150'],
    ],
    [
      ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)'],
      ['V-1', 200, 3, 5],
      ['', '', '', '5'],
      ['', '', 'see the rack', ''],
    ],
  ),
  facts: facts({}),
  notRead: [
    row('Pump', 'Channels'),
    row('5', 'Monitor'),
    { ...row('see the rack', 'Monitor'), severity: 'warning' },
  ],
  channels: { 'V-1': { verdict: 'within', inBypass: false } },
  critical: ['not read'],
  summary: { within: 1, notRead: 3 },
};
