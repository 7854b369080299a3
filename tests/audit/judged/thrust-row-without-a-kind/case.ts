import { measured } from '../../oracle/plainChannel.ts';
import { facts, pair, type CaseTwo } from '../caseTwo.ts';

export const judged: CaseTwo = {
  because:
    'No kind, and both zero voltages belong to a position: it is not assumed to be radial (then 15 mil would be within), and asked. Really, toward, (15·200 + 1000)/200 = 20 mil, 33 % late. One with nothing but a sensitivity is radial.',
  sheets: pair(
    [
      ['Tag', 'Machine', 'Measured sensitivity (mV/mil)', 'Measured zero voltage (V)'],
      ['A-1', 'Pump', 200, -11],
      ['V-1', 'Pump', 200, null],
    ],
    [
      [
        ...['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)'],
        'Configured zero voltage (V)',
      ],
      ['A-1', 200, 10, 15, -10],
      ['V-1', 200, 3, 5, null],
    ],
  ),
  facts: facts(
    { tag: 'A-1', kind: null, alert: 10, danger: 15, zeroConfigured: -10, ...measured(200, { zero: -11 }) },
    {},
  ),
  channels: {
    'A-1': {
      verdict: 'incomplete',
      thresholds: { danger: { effective: null, panel: null, interimSetpoint: null } },
    },
    'V-1': { verdict: 'within' },
  },
  critical: ['Pump / A-1'],
};
