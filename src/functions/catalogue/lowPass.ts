import { lowPass } from '../../method/frequency/lowPass.ts';
import { number } from '../declare/argument.ts';
import { declare } from '../declare/declare.ts';

export const LOWPASS = declare({
  id: 'LOWPASS',
  description:
    'Response of a first-order low-pass, such as a long cable, at a frequency: what it gives of the full sensitivity.',
  arguments: [
    number('frequency', 'positive', 'Frequency in the unit of the corner: both in Hz, or both in r/min.'),
    number('corner', 'positive', 'Corner frequency, where 0.707 of the sensitivity is left.'),
  ],
  result: 'number',
  resultDescription: 'Fraction of the sensitivity far below the corner.',
  example: { formula: '=TRIPDRIFT.LOWPASS(750,1000)', result: '0.8' },
  native: '1/SQRT(1+(frequency/corner)^2)',
  run: lowPass,
});
