import { measured } from '../../oracle/plainChannel.ts';
import { facts, pair, type CaseTwo } from '../caseTwo.ts';

/** 100 mV/mil from −1 V at 10 mil to −3 V at 30 mil. */
const half = [10, 15, 20, 25, 30].map((gap) => [gap, -gap / 10] as const);

export const judged: CaseTwo = {
  because:
    'The worst line governs, of equals the one that acts latest. By hand at 200 mV/mil configured. equal: 5·200/160 = 6.25 by the list, 5·200/150 = 6.667 by a known vibration, both late; the least panel level is 5·0.75 = 3.75, two digits 3.7. worse: early at 4.545 by the list, late at 6.25 by the check. short: at −2 V, 20 mil, a record of 100 mV/mil shows swings of 2 V at most, indicated as 10 mil: danger 12 mil, 2.4 V, is within by the list and cannot be shown to act by the record; alert 5 mil, 1 V, acts at 10 mil. At 12 mil 1.2 V are shown, 6 mil; at 5 mil 2.5 mil. 2oo2 with such a member cannot be counted on.',
  sheets: [
    ...pair(
      [
        ['Tag', 'Machine', 'Measured sensitivity (mV/mil)', 'Gap voltage (V)'],
        ['equal', 'Pump', 160, null],
        ['worse', 'Pump', 220, null],
        ['short', 'Pump', 200, -2],
        ['sound', 'Pump', 200, null],
      ],
      [
        [
          ...['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)'],
          ...['Voting group', 'Voting'],
        ],
        ['equal', 200, 3, 5, null, null],
        ['worse', 200, 3, 5, null, null],
        ['short', 200, 5, 12, 'Brg', '2oo2'],
        ['sound', 200, 5, 12, 'Brg', '2oo2'],
      ],
    ),
    {
      name: 'Shaker',
      rows: [
        ['Tag', 'Displacement (mil p-p)', 'Output (mV p-p)', 'Frequency (Hz)'],
        ['equal', 4, 600, 60],
        ['worse', 4, 640, 60],
      ],
    },
    {
      name: 'Probe records',
      rows: [['Tag', 'Gap (mil)', 'Output (V)'], ...half.map((point) => ['short', ...point])],
    },
  ],
  facts: facts(
    { tag: 'equal', ...measured(160, { check: [[4, 600]] }) },
    { tag: 'worse', ...measured(220, { check: [[4, 640]] }) },
    {
      tag: 'short',
      alert: 5,
      danger: 12,
      group: 'Brg',
      voting: '2oo2',
      ...measured(200, { gapVoltage: -2, record: half }),
    },
    { tag: 'sound', alert: 5, danger: 12, group: 'Brg', voting: '2oo2' },
  ),
  channels: {
    equal: {
      verdict: 'late',
      thresholds: {
        danger: {
          effective: 20 / 3,
          governedBy: 'known vibration',
          lines: {
            'listed sensitivity': { effective: 6.25, verdict: 'late' },
            'known vibration': { effective: 20 / 3, verdict: 'late' },
          },
          panel: 3.7,
          interimSetpoint: 3.7,
        },
      },
    },
    worse: {
      verdict: 'late',
      thresholds: {
        danger: {
          effective: 6.25,
          governedBy: 'known vibration',
          lines: {
            'listed sensitivity': { effective: 1000 / 220, verdict: 'early' },
            'known vibration': { effective: 6.25, verdict: 'late' },
          },
          panel: 4,
        },
      },
    },
    short: {
      verdict: 'late',
      thresholds: {
        danger: {
          verdict: 'undetermined',
          governedBy: 'calibration record',
          effective: null,
          lines: {
            'listed sensitivity': { effective: 12, verdict: 'within' },
            'calibration record': { effective: null, verdict: 'undetermined' },
          },
          panel: 6,
          interimSetpoint: null,
        },
        alert: { effective: 10, verdict: 'late', panel: 2.5, interimSetpoint: 2.5 },
      },
    },
    sound: { verdict: 'within' },
  },
  groups: [
    { name: 'Brg', threshold: 'danger', intended: 12, effective: null, canTrip: false },
    { name: 'Brg', threshold: 'alert', intended: 5, effective: 10, canTrip: true, decidedBy: ['short'] },
  ],
  critical: ['Pump / equal', 'Pump / group Brg / danger ×1', 'Pump / short', 'Pump / worse'],
};
