import { probabilityLater } from '../../method/decision/probabilityLater.ts';
import { number, optionalNumber } from '../declare/argument.ts';
import { declare } from '../declare/declare.ts';
import { configured, measured, multiplier, setpoint, uncertainty } from './shared.ts';

export const PROBABILITYLATER = declare({
  id: 'PROBABILITYLATER',
  description:
    'Probability that a setpoint acts later than a limit, with the measured sensitivity normally distributed.',
  arguments: [
    setpoint,
    number('limit', 'positive', 'Greatest acceptable real displacement, in the unit of the setpoint.'),
    configured,
    measured,
    uncertainty,
    optionalNumber('coverage', 'positive', 2, 'Coverage factor of the uncertainty; 2 if left out.'),
    multiplier,
  ],
  result: 'number',
  resultDescription: 'Probability from 0 to 1.',
  example: { formula: '=TRIPDRIFT.PROBABILITYLATER(5,6.25,200,160,0.03)', result: '0.5' },
  native: 'NORM.S.DIST((multiplier*setpoint*configured/limit-measured)*coverage/(uncertainty*measured),TRUE)',
  run: probabilityLater,
});
