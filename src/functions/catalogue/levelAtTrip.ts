import { levelAtTripDoubling, levelAtTripLinear } from '../../method/time/levelAtTrip.ts';
import { number } from '../declare/argument.ts';
import { declare } from '../declare/declare.ts';
import { law } from './shared.ts';

export const LEVELATTRIP = declare({
  id: 'LEVELATTRIP',
  description: 'Real vibration when the relay acts after its delay, while the vibration goes on growing.',
  arguments: [
    number('effective', 'positive', 'Real displacement at which the setpoint acts.'),
    number('delay', 'notNegative', 'Alarm delay.'),
    number(
      'growth',
      'positive',
      'Growth per time, or the doubling time with the law "doubling"; in the time unit of the delay.',
    ),
    law,
  ],
  result: 'number',
  resultDescription: 'Level, in the unit of the effective threshold.',
  example: { formula: '=TRIPDRIFT.LEVELATTRIP(6.25,3,0.5)', result: '7.75' },
  native: {
    by: 'law',
    forms: { linear: 'effective+growth*delay', doubling: 'effective*2^(delay/growth)' },
  },
  run: (effective, delay, growth, by) =>
    by === 'linear'
      ? levelAtTripLinear(effective, growth, delay)
      : levelAtTripDoubling(effective, growth, delay),
});
