import { highPass } from '../../method/frequency/highPass.ts';
import { number } from '../declare/argument.ts';
import { declare } from '../declare/declare.ts';

export const HIGHPASS = declare({
  id: 'HIGHPASS',
  description:
    'Response of a second-order high-pass, such as a seismic sensor, at a frequency: what it gives of the full sensitivity.',
  arguments: [
    number('frequency', 'positive', 'Frequency in the unit of the corner: both in Hz, or both in r/min.'),
    number('corner', 'positive', 'Natural frequency of the sensor.'),
    number('damping', 'positive', 'Damping as a fraction of critical damping, such as 0.7.'),
  ],
  result: 'number',
  resultDescription: 'Fraction of the sensitivity far above the corner; above 1 where the sensor resonates.',
  example: { formula: '=TRIPDRIFT.HIGHPASS(8,8,0.625)', result: '0.8' },
  native: '1/SQRT((1-(corner/frequency)^2)^2+(2*damping*corner/frequency)^2)',
  run: highPass,
});
