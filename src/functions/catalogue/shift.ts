import { shift } from '../../method/vibration/shift.ts';
import { declare } from '../declare/declare.ts';
import { configured, measured, multiplier, setpoint } from './shared.ts';

export const SHIFT = declare({
  id: 'SHIFT',
  description: 'How much later (+) or earlier (−) a setpoint acts than intended, as real displacement.',
  arguments: [setpoint, configured, measured, multiplier],
  result: 'number',
  resultDescription:
    'Effective threshold less the intended one, in the unit of the setpoint; above 0 is late.',
  example: { formula: '=TRIPDRIFT.SHIFT(5,200,160)', result: '1.25' },
  native: 'multiplier*setpoint*(configured-measured)/measured',
  run: shift,
});
