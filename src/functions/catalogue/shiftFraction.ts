import { shiftFraction } from '../../method/vibration/shiftFraction.ts';
import { declare } from '../declare/declare.ts';
import { configured, measured } from './shared.ts';

export const SHIFTFRACTION = declare({
  id: 'SHIFTFRACTION',
  description: 'Shift of every threshold of a channel as a fraction of the intended one.',
  arguments: [configured, measured],
  result: 'number',
  resultDescription: 'Configured over measured sensitivity, less 1; above 0 is late. 0.25 is 25 %.',
  example: { formula: '=TRIPDRIFT.SHIFTFRACTION(200,160)', result: '0.25' },
  native: '(configured-measured)/measured',
  run: shiftFraction,
});
