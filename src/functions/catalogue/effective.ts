import { effectiveThreshold } from '../../method/vibration/effective.ts';
import { declare } from '../declare/declare.ts';
import { configured, measured, multiplier, setpoint } from './shared.ts';

export const EFFECTIVE = declare({
  id: 'EFFECTIVE',
  description: 'Real displacement at which a setpoint acts.',
  arguments: [setpoint, configured, measured, multiplier],
  result: 'number',
  resultDescription: 'Effective threshold, in the unit of the setpoint.',
  example: { formula: '=TRIPDRIFT.EFFECTIVE(5,200,160)', result: '6.25' },
  native: 'multiplier*setpoint*configured/measured',
  run: effectiveThreshold,
});
