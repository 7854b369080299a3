import { lateByDoubling, lateByLinear } from '../../method/time/lateBy.ts';
import { number } from '../declare/argument.ts';
import { declare } from '../declare/declare.ts';
import { law, setpoint } from './shared.ts';

export const LATEBY = declare({
  id: 'LATEBY',
  description:
    'How much later a threshold acts than intended while the vibration grows; below 0 it acts earlier.',
  arguments: [
    setpoint,
    number('effective', 'positive', 'Real displacement at which it acts, in the unit of the setpoint.'),
    number('growth', 'positive', 'Growth per time, or the doubling time with the law "doubling".'),
    law,
  ],
  result: 'number',
  resultDescription: 'Time, in the time unit of the growth.',
  example: { formula: '=TRIPDRIFT.LATEBY(5,6.25,0.5)', result: '2.5' },
  native: {
    by: 'law',
    forms: { linear: '(effective-setpoint)/growth', doubling: 'growth*LOG(effective/setpoint,2)' },
  },
  run: (intended, effective, growth, by) =>
    by === 'linear' ? lateByLinear(effective, intended, growth) : lateByDoubling(effective, intended, growth),
});
