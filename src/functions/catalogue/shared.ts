import { type ChoiceArgument, number, optionalNumber } from '../declare/argument.ts';
import type { Direction } from '../../method/axial/position.ts';

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
export const growthLaw: ChoiceArgument<'linear' | 'doubling'> = {
  kind: 'choice',
  name: 'law',
  choices: ['linear', 'doubling'],
  otherwise: 'linear',
  description:
    '"linear" (if left out): growth is an amount per time. "doubling": growth is the doubling time.',
};

const direction: ChoiceArgument<Direction> = {
  kind: 'choice',
  name: 'direction',
  choices: ['toward', 'away'],
  description: 'Which movement counts as positive: "toward" the probe or "away" from it.',
};

/** A position setpoint with its chain, as the functions of axial position take it. */
export const axialArguments = [
  number('setpoint', 'notZero', 'Position setpoint with its sign: below 0 in the counter direction.'),
  number(
    'configured',
    'positive',
    'Sensitivity that the monitor is configured with, in mV per unit of the setpoint.',
  ),
  number('measured', 'positive', 'Sensitivity measured on the chain, in mV per unit of the setpoint.'),
  number(
    'zeroConfigured',
    'notZero',
    'Gap voltage that the monitor takes for zero position, in V (as a rule below 0).',
  ),
  number('zeroMeasured', 'notZero', 'Gap voltage measured at the mechanical zero, in V (as a rule below 0).'),
  direction,
] as const;
