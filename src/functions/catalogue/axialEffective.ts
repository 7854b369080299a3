import { axialEffective } from '../../method/axial/effective.ts';
import { declare } from '../declare/declare.ts';
import { axialArguments } from './shared.ts';

export const AXIALEFFECTIVE = declare({
  id: 'AXIALEFFECTIVE',
  description:
    'Real position at which an axial position setpoint acts, with the zero voltage shifted as well.',
  arguments: axialArguments,
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
