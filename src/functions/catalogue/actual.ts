import { actual } from '../../method/vibration/actual.ts';
import { number } from '../declare/argument.ts';
import { declare } from '../declare/declare.ts';
import { configured, measured } from './shared.ts';

export const ACTUAL = declare({
  id: 'ACTUAL',
  description: 'What the shaft really does when the monitor shows this much.',
  arguments: [
    number('indicated', 'notNegative', 'Reading of the monitor, in any unit.'),
    configured,
    measured,
  ],
  result: 'number',
  resultDescription: 'Real vibration, in the unit of the reading.',
  example: { formula: '=TRIPDRIFT.ACTUAL(4,200,160)', result: '5' },
  native: 'indicated*configured/measured',
  run: actual,
});
