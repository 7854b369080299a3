import { measured } from '../../oracle/plainChannel.ts';
import { facts, pair, type CaseTwo } from '../caseTwo.ts';

export const judged: CaseTwo = {
  because:
    'By hand at 161 for 200 mV/mil: 2.4 mil shown is 2.4·200/161 = 2.9814 mil, past the alert of 2.9 that was meant and shown below it; it acts at 2.9·200/161 = 3.6025. 4.2 mil shown is 5.2174 mil, past the danger of 5; the alert of 2.9 is shown too, and is not silent. 2.3 mil is 2.857: neither.',
  sheets: pair(
    [
      ['Tag', 'Machine', 'Measured sensitivity (mV/mil)', 'Present reading (mil)'],
      ['alert', 'Pump', 161, 2.4],
      ['danger', 'Pump', 161, 4.2],
      ['below', 'Pump', 161, 2.3],
    ],
    [
      ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)'],
      ['alert', 200, 2.9, 5],
      ['danger', 200, 2.9, 5],
      ['below', 200, 2.9, 5],
    ],
  ),
  facts: facts(
    { tag: 'alert', alert: 2.9, reading: 2.4, ...measured(161) },
    { tag: 'danger', alert: 2.9, reading: 4.2, ...measured(161) },
    { tag: 'below', alert: 2.9, reading: 2.3, ...measured(161) },
  ),
  channels: {
    // 2.9·0.805 = 2.3345 and 5·0.805 = 4.025: two digits, to the early side.
    alert: {
      verdict: 'late',
      thresholds: { alert: { effective: 580 / 161, panel: 2.3 }, danger: { panel: 4 } },
    },
    danger: { verdict: 'late' },
    below: { verdict: 'late' },
  },
  critical: ['Pump / alert', 'Pump / below', 'Pump / danger'],
  attention: [
    { severity: 'warning', tag: 'alert', threshold: 'alert', set: 2.9, real: 480 / 161 },
    { severity: 'critical', tag: 'danger', threshold: 'danger', set: 5, real: 840 / 161 },
  ],
};
