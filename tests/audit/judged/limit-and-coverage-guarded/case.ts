import { measured } from '../../oracle/plainChannel.ts';
import { facts, pair, type CaseTwo } from '../caseTwo.ts';

export const judged: CaseTwo = {
  because:
    'By hand. 5·200/192.3077 = 5.2 mil ± 1 % is within (0.952 to 0.971), its upper end 5.2/0.99 = 5.2525: it may act beyond 5.23 mil, not beyond 5.26. 191 mV/mil ± 1 % at k = 1 is ± 2 % at the k = 2 of the policy: 0.9359 to 0.9741, undetermined, not within. Early, at 5·200/220 = 4.545, is a warning.',
  sheets: pair(
    [
      [
        ...['Tag', 'Machine', 'Measured sensitivity (mV/mil)', 'Uncertainty (%)', 'Coverage factor'],
        'Limit (mil)',
      ],
      ['may', 'Pump', 1000 / 5.2, 1, 2, 5.23],
      ['below', 'Pump', 1000 / 5.2, 1, 2, 5.26],
      ['one', 'Pump', 191, 1, 1, null],
      ['early', 'Pump', 220, null, null, null],
    ],
    [
      ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)'],
      ['may', 200, 3, 5],
      ['below', 200, 3, 5],
      ['one', 200, 3, 5],
      ['early', 200, 3, 5],
    ],
  ),
  facts: facts(
    { tag: 'may', limit: 5.23, ...measured(1000 / 5.2, { uncertainty: 0.01 }) },
    { tag: 'below', limit: 5.26, ...measured(1000 / 5.2, { uncertainty: 0.01 }) },
    { tag: 'one', coverage: 1, ...measured(191, { uncertainty: 0.01 }) },
    { tag: 'early', ...measured(220) },
  ),
  channels: {
    may: { verdict: 'within', thresholds: { danger: { effective: 5.2, high: 5.2 / 0.99 } } },
    below: { verdict: 'within' },
    one: { verdict: 'undetermined', thresholds: { danger: { high: 1000 / 191 / 0.98 } } },
    early: { verdict: 'early' },
  },
  critical: ['Pump / may', 'Pump / one'],
  attention: [
    { severity: 'critical', tag: 'may', threshold: 'danger', limit: 5.23 },
    { severity: 'warning', tag: 'early', threshold: 'danger' },
  ],
};
