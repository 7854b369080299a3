import { indicated } from '../../method/vibration/indicated.ts';
import { number } from '../declare/argument.ts';
import { declare } from '../declare/declare.ts';
import { configured, measured } from './shared.ts';

export const INDICATED = declare({
  id: 'INDICATED',
  description: 'What the monitor shows when the shaft really moves this much.',
  arguments: [number('real', 'notNegative', 'Real vibration, in any unit.'), configured, measured],
  result: 'number',
  resultDescription: 'Reading of the monitor, in the unit of the real vibration.',
  example: { formula: '=TRIPDRIFT.INDICATED(5,200,160)', result: '4' },
  native: 'real*measured/configured',
  run: indicated,
});
