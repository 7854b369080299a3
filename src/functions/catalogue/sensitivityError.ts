import { sensitivityError } from '../../method/vibration/sensitivityError.ts';
import { declare } from '../declare/declare.ts';
import { configured, measured } from './shared.ts';

export const SENSITIVITYERROR = declare({
  id: 'SENSITIVITYERROR',
  description: 'Error of the measured sensitivity as a fraction of the configured one.',
  arguments: [configured, measured],
  result: 'number',
  resultDescription:
    'Measured over configured sensitivity, less 1. It is not the shift with its sign turned.',
  example: { formula: '=TRIPDRIFT.SENSITIVITYERROR(200,160)', result: '-0.2' },
  native: '(measured-configured)/configured',
  run: sensitivityError,
});
