import { number, optionalNumber } from '../declare/argument.ts';
import type { ChoiceArgument } from '../declare/argument.ts';

/** Arguments that several functions share. */
export const setpoint = number(
  'setpoint',
  'positive',
  'Setpoint as the monitor shows it, in any unit of displacement.',
);
export const configured = number(
  'configured',
  'positive',
  'Sensitivity that the monitor is configured with.',
);
export const measured = number(
  'measured',
  'positive',
  'Sensitivity measured on the chain, in the unit of the configured one.',
);
export const multiplier = optionalNumber(
  'multiplier',
  'positive',
  1,
  'Set-point multiplier in force, such as 3 at start-up; 1 if left out.',
);
export const uncertainty = number(
  'uncertainty',
  'share',
  'Expanded uncertainty of the measured sensitivity, as a fraction of it: 3 % is 0.03.',
);
export const speed = number('speed', 'positive', 'Shaft speed in r/min.');

/** How vibration grows: evenly, or by doubling. */
export const law: ChoiceArgument<'linear' | 'doubling'> = {
  kind: 'choice',
  name: 'law',
  choices: ['linear', 'doubling'],
  otherwise: 'linear',
  description:
    '"linear" (if left out): growth is an amount per time. "doubling": growth is the doubling time.',
};
