import { measured } from '../../oracle/plainChannel.ts';
import { facts, pair, type CaseTwo } from '../caseTwo.ts';

export const judged: CaseTwo = {
  because:
    'A kind may stand under Type. By hand, toward, V0c −10 V, V0m −11 V: (20·200 + 1000)/200 = 25 mil, the alert 15 + 5 = 20 mil. As a radial channel it would be within. The monitor shows 20 − 5 = 15 at 20, 15 − 5 = 10 at 15.',
  sheets: pair(
    [
      [
        ...['Tag', 'Machine', 'Type', 'Measured sensitivity (mV/mil)', 'Measured zero voltage (V)'],
        'Positive direction',
      ],
      ['A-1', 'Pump', 'thrust', 200, -11, 'toward'],
      ['V-1', 'Pump', 'radial', 200, null, null],
    ],
    [
      [
        ...['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)'],
        'Configured zero voltage (V)',
      ],
      ['A-1', 200, 15, 20, -10],
      ['V-1', 200, 3, 5, null],
    ],
  ),
  facts: facts(
    {
      tag: 'A-1',
      kind: 'axial',
      alert: 15,
      danger: 20,
      zeroConfigured: -10,
      direction: 'toward',
      ...measured(200, { zero: -11 }),
    },
    {},
  ),
  channels: {
    'A-1': {
      verdict: 'late',
      thresholds: {
        danger: { effective: 25, panel: 15, interimSetpoint: 15 },
        alert: { effective: 20, panel: 10 },
      },
    },
    'V-1': { verdict: 'within' },
  },
  critical: ['Pump / A-1'],
};
