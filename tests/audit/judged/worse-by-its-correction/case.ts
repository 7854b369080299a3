import { corrected, measured } from '../../oracle/plainChannel.ts';
import { facts, pair, type CaseTwo } from '../caseTwo.ts';

export const judged: CaseTwo = {
  because:
    'Judged as it stands now. By hand: within at 200 mV/mil as found, late at 5·200/160 = 6.25 mil as left; the other way round it was late and is within. A group counts its members as they are now: 2oo2 acts at 6.25 mil.',
  sheets: pair(
    [
      [
        ...['Tag', 'Machine', 'Measured sensitivity (mV/mil)', 'As-left sensitivity (mV/mil)'],
        'Present reading (mil)',
      ],
      ['worse', 'Pump', 200, 160, 2.9],
      ['better', 'Pump', 160, 200, 2.9],
    ],
    [
      [
        ...['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)'],
        ...['Voting group', 'Voting'],
      ],
      ['worse', 200, 3, 5, 'Brg', '2oo2'],
      ['better', 200, 3, 5, 'Brg', '2oo2'],
    ],
  ),
  facts: facts(
    { tag: 'worse', ...measured(200), ...corrected(160), reading: 2.9, group: 'Brg', voting: '2oo2' },
    { tag: 'better', ...measured(160), ...corrected(200), reading: 2.9, group: 'Brg', voting: '2oo2' },
  ),
  channels: {
    worse: {
      verdict: 'late',
      state: 'as left',
      asFound: 'within',
      thresholds: { danger: { effective: 6.25, panel: 4, interimSetpoint: 4 }, alert: { effective: 3.75 } },
    },
    better: {
      verdict: 'within',
      state: 'as left',
      asFound: 'late',
      thresholds: { danger: { effective: 5, interimSetpoint: null } },
    },
  },
  groups: [
    { name: 'Brg', threshold: 'danger', intended: 5, effective: 6.25, decidedBy: ['worse'] },
    { name: 'Brg', threshold: 'alert', intended: 3, effective: 3.75, decidedBy: ['worse'] },
  ],
  critical: ['Pump / group Brg / danger ×1', 'Pump / worse'],
  // 2.9·200/160 = 3.625 mil: past the alert meant, by the sensitivity as left; 2.9 mil of the other are 2.9 mil.
  attention: [{ severity: 'warning', tag: 'worse', threshold: 'alert', set: 3, real: 3.625 }],
  summary: { late: 1, within: 1 },
};
