import { measured } from '../../oracle/plainChannel.ts';
import { facts, pair, type CaseTwo } from '../caseTwo.ts';

const velocity = { kind: 'velocity', configured: 100, alert: 0.3, danger: 0.5 } as const;

export const judged: CaseTwo = {
  because:
    'Setpoints of velocity that state no detection are not compared with a limit in pk, a reading in rms or a full scale in pk: none is doubled or turned into another number, none decides. 0.5·100/100 = 0.5 in/s.',
  sheets: pair(
    [
      [
        ...['Tag', 'Machine', 'Kind', 'Measured sensitivity (mV/in/s)', 'Limit (in/s pk)'],
        'Present reading (in/s rms)',
      ],
      ['S-1', 'Pump', 'velocity', 100, 0.4, 0.45],
    ],
    [
      [
        ...['Tag', 'Configured sensitivity (mV/in/s)', 'Alert (in/s)', 'Danger (in/s)'],
        'Full scale (in/s pk)',
      ],
      ['S-1', 100, 0.3, 0.5, 0.45],
    ],
  ),
  facts: facts({ tag: 'S-1', ...velocity, ...measured(100) }),
  channels: { 'S-1': { verdict: 'within', thresholds: { danger: { setpoint: 0.5, effective: 0.5 } } } },
  critical: [],
};
