import { axialEffective } from '../../method/axial/effective.ts';
import { number } from '../declare/argument.ts';
import { declare } from '../declare/declare.ts';

export const AXIALEFFECTIVE = declare({
  id: 'AXIALEFFECTIVE',
  description:
    'Real position at which an axial position setpoint acts, with the zero voltage shifted as well.',
  arguments: [
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
    number(
      'zeroMeasured',
      'notZero',
      'Gap voltage measured at the mechanical zero, in V (as a rule below 0).',
    ),
    {
      kind: 'choice',
      name: 'direction',
      choices: ['toward', 'away'],
      description: 'Which movement counts as positive: "toward" the probe or "away" from it.',
    },
  ],
  result: 'number',
  resultDescription:
    'Position in the unit of the setpoint, with its sign; on the other side of zero it acts at rest.',
  example: { formula: '=TRIPDRIFT.AXIALEFFECTIVE(20,200,160,-10,-10,"toward")', result: '25' },
  native: {
    by: 'direction',
    forms: {
      toward: '(setpoint*configured+(zeroConfigured-zeroMeasured)*1000)/measured',
      away: '(setpoint*configured-(zeroConfigured-zeroMeasured)*1000)/measured',
    },
  },
  run: axialEffective,
});
