import { measured } from '../../oracle/plainChannel.ts';
import { facts, pair, type CaseTwo } from '../caseTwo.ts';

export const judged: CaseTwo = {
  because:
    'By hand, danger 4 mil at 161 for 200 mV/mil ± 2 %: 4·161·0.98/200 = 3.1556; in steps of 0.05 mil 3.15, without steps two digits 3.1, never 3.2. 5 mil at 160 ± 8 %: 5·0.8·0.92 = 3.68, not 4; late, for 6.25/1.08 = 5.787 is later than 5/0.95. On a full scale of 4 mil danger 5 mil cannot act: no interim setpoint. Under 191 ± 2 % nothing is late: none either, and 5·0.955·0.98 = 4.6795 is 4.6.',
  sheets: pair(
    [
      ['Tag', 'Machine', 'Measured sensitivity (mV/mil)', 'Uncertainty (%)'],
      ['steps', 'Pump', 161, 2],
      ['digits', 'Pump', 161, 2],
      ['wide', 'Pump', 160, 8],
      ['scale', 'Pump', 170, null],
      ['unsure', 'Pump', 191, 2],
    ],
    [
      [
        ...['Tag', 'Configured sensitivity (mV/mil)', 'Alert (mil)', 'Danger (mil)'],
        ...['Full scale (mil)', 'Resolution (mil)'],
      ],
      ['steps', 200, 3, 4, null, 0.05],
      ['digits', 200, 3, 4, null, null],
      ['wide', 200, 3, 5, null, 0.01],
      ['scale', 200, 3, 5, 4, null],
      ['unsure', 200, 3, 5, null, null],
    ],
  ),
  facts: facts(
    { tag: 'steps', danger: 4, resolution: 0.05, ...measured(161, { uncertainty: 0.02 }) },
    { tag: 'digits', danger: 4, ...measured(161, { uncertainty: 0.02 }) },
    { tag: 'wide', resolution: 0.01, ...measured(160, { uncertainty: 0.08 }) },
    { tag: 'scale', fullScale: 4, ...measured(170) },
    { tag: 'unsure', ...measured(191, { uncertainty: 0.02 }) },
  ),
  channels: {
    // 3·0.805·0.98 = 2.3667
    steps: {
      verdict: 'late',
      thresholds: { danger: { panel: 3.15, interimSetpoint: 3.15 }, alert: { panel: 2.35 } },
    },
    digits: {
      verdict: 'late',
      thresholds: { danger: { panel: 3.1, interimSetpoint: 3.1 }, alert: { panel: 2.3 } },
    },
    wide: { verdict: 'late', thresholds: { danger: { panel: 3.68, interimSetpoint: 3.68 } } },
    scale: { verdict: 'unreachable', thresholds: { danger: { interimSetpoint: null } } },
    unsure: { verdict: 'undetermined', thresholds: { danger: { panel: 4.6, interimSetpoint: null } } },
  },
  critical: ['Pump / digits', 'Pump / scale', 'Pump / steps', 'Pump / unsure', 'Pump / wide'],
};
