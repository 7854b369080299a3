import { facts, pair, type CaseTwo } from '../caseTwo.ts';

const near = (text: string, looksLike: string, sheet: string) =>
  ({ what: 'column', text, looksLike, severity: 'critical', sheet }) as const;

export const judged: CaseTwo = {
  because:
    'Each header nearly spells a meaning and none is used: nothing is guessed, so danger 5 mil looks within, and the audit is not clean. (Used, a full scale of 4 mil, ±6 %, a bypass and 3 × 5 mil on 4 mil would each be critical.)',
  sheets: pair(
    [
      ['Tag', 'Machine', 'Measured sensitivity (mV/mil)', 'Uncertanty (%)'],
      ['V-1', 'Pump', 200, 6],
    ],
    [
      [
        ...['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)', 'Full scael (mil)'],
        ...['Bypased', 'Start-up mult.'],
      ],
      ['V-1', 200, 3, 5, 4, 'yes', 3],
    ],
  ),
  facts: facts({}),
  notRead: [
    near('Uncertanty (%)', 'uncertainty', 'Channels'),
    near('Full scael (mil)', 'full scale', 'Monitor'),
    near('Bypased', 'bypass', 'Monitor'),
    near('Start-up mult.', 'set-point multiplier', 'Monitor'),
  ],
  channels: { 'V-1': { verdict: 'within', inBypass: false } },
  critical: ['not read'],
  summary: { within: 1, inBypass: 0, notRead: 4 },
};
