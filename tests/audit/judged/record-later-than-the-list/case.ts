import { measured } from '../../oracle/plainChannel.ts';
import { gaps, straight } from '../../recordSheets.ts';
import { facts, pair, type CaseTwo } from '../caseTwo.ts';

const [of1, of2] = [150, 160].map((sensitivity) => straight(sensitivity, gaps(10, 90, 10)));

export const judged: CaseTwo = {
  because:
    'By hand with Kc 200 mV/mil, alert 4, danger 6 mil. Both are 200 mV/mil by the list: 6 mil, within. Straight records of 150 and 160: 6·200/150 = 8 and 6·200/160 = 7.5 mil, alerts 4·200/150 = 5.333 and 5 mil. Panel levels by the record, the least: 6·0.75 = 4.5 and 6·0.8 = 4.8, alerts 3 and 3.2 mil. 1oo2 acts at the earlier governing one, 7.5, later than 6/0.95 = 6.316. −7.5 V and −8 V are 50 mil: reach 2·40 mil.',
  sheets: [
    ...pair(
      [
        ['Tag', 'Machine', 'Measured sensitivity (mV/mil)', 'Gap voltage (V)'],
        ['V-1', 'Pump', 200, -7.5],
        ['V-2', 'Pump', 200, -8],
      ],
      [
        ['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)', 'Voting group', 'Voting'],
        ['V-1', 200, 4, 6, 'Brg', '1oo2'],
        ['V-2', 200, 4, 6, 'Brg', '1oo2'],
      ],
    ),
    {
      name: 'Probe records',
      rows: [
        ['Tag', 'Gap (mil)', 'Output (V)'],
        ...of1!.map((point) => ['V-1', ...point]),
        ...of2!.map((point) => ['V-2', ...point]),
      ],
    },
  ],
  facts: facts(
    {
      alert: 4,
      danger: 6,
      group: 'Brg',
      voting: '1oo2',
      ...measured(200, { gapVoltage: -7.5, record: of1! }),
    },
    {
      tag: 'V-2',
      alert: 4,
      danger: 6,
      group: 'Brg',
      voting: '1oo2',
      ...measured(200, { gapVoltage: -8, record: of2! }),
    },
  ),
  channels: {
    'V-1': {
      verdict: 'late',
      thresholds: {
        danger: {
          effective: 8,
          verdict: 'late',
          governedBy: 'calibration record',
          lines: {
            'listed sensitivity': { effective: 6, verdict: 'within' },
            'calibration record': { effective: 8, verdict: 'late' },
          },
          panel: 4.5,
          interimSetpoint: 4.5,
        },
        alert: { effective: 16 / 3, panel: 3, interimSetpoint: 3 },
      },
    },
    'V-2': {
      verdict: 'late',
      thresholds: {
        danger: { effective: 7.5, governedBy: 'calibration record', panel: 4.8, interimSetpoint: 4.8 },
        alert: { effective: 5, panel: 3.2 },
      },
    },
  },
  groups: [
    { name: 'Brg', threshold: 'danger', multiplier: 1, intended: 6, effective: 7.5, decidedBy: ['V-2'] },
    { name: 'Brg', threshold: 'alert', multiplier: 1, intended: 4, effective: 5, decidedBy: ['V-2'] },
  ],
  critical: ['Pump / V-1', 'Pump / V-2', 'Pump / group Brg / danger ×1'],
};
