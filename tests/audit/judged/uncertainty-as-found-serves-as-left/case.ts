import { corrected, measured } from '../../oracle/plainChannel.ts';
import { facts, pair, type CaseTwo } from '../caseTwo.ts';

export const judged: CaseTwo = {
  because:
    'By hand: 191 mV/mil as left is 0.955 of 200, within 0.95 by itself. The ±2 % of the reading as found serves: 0.9359 to 0.9741, across. With ±0.4 % of its own, 0.9512 to 0.9588, it is within. 5·200/191 = 5.235602 mil, from 5.235602/1.02 to 5.235602/0.98.',
  sheets: pair(
    [
      [
        ...['Tag', 'Machine', 'Measured sensitivity (mV/mil)', 'Uncertainty (%)'],
        ...['As-left sensitivity (mV/mil)', 'As-left uncertainty (%)'],
      ],
      ['kept', 'Pump', 160, 2, 191, null],
      ['own', 'Pump', 160, 2, 191, 0.4],
    ],
    [
      ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)'],
      ['kept', 200, 3, 5],
      ['own', 200, 3, 5],
    ],
  ),
  facts: facts(
    { tag: 'kept', ...measured(160, { uncertainty: 0.02 }), ...corrected(191) },
    { tag: 'own', ...measured(160, { uncertainty: 0.02 }), ...corrected(191, { uncertainty: 0.004 }) },
  ),
  channels: {
    kept: {
      verdict: 'undetermined',
      asFound: 'late',
      thresholds: { danger: { effective: 1000 / 191, low: 1000 / 191 / 1.02, high: 1000 / 191 / 0.98 } },
    },
    own: { verdict: 'within', asFound: 'late' },
  },
  critical: ['Pump / kept'],
};
