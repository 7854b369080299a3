import { compensated } from '../../method/runout.ts';
import { number, optionalNumber } from '../declare/argument.ts';
import { declare } from '../declare/declare.ts';
import { configured, measured } from './shared.ts';

export const COMPENSATE = declare({
  id: 'COMPENSATE',
  description:
    'Real vibration of one component (1X) without its slow-roll runout, each scaled with the sensitivity it was read with.',
  arguments: [
    number('amplitude', 'notNegative', 'Amplitude of the component as the monitor shows it.'),
    number('phase', 'any', 'Its phase in degrees.'),
    number(
      'runout',
      'notNegative',
      'Amplitude of the slow-roll vector as shown, in the same unit and detection.',
    ),
    number('runoutPhase', 'any', 'Its phase in degrees.'),
    configured,
    measured,
    optionalNumber(
      'measuredThen',
      'positive',
      null,
      'Sensitivity when the slow-roll vector was taken; that of now if left out.',
    ),
  ],
  result: 'row',
  resultDescription:
    'Two cells: real amplitude in the unit of the amplitude, and its phase from 0 to below 360 degrees. Not for overall values.',
  example: {
    formula: '=TRIPDRIFT.COMPENSATE(4,30,1,210,200,160,200)',
    result: '6\t30',
  },
  run: (amplitude, phase, runout, runoutPhase, divisor, now, then) => {
    const real = compensated(
      { amplitude, phase },
      { amplitude: runout, phase: runoutPhase },
      divisor,
      now,
      then ?? now,
    );
    return [real.amplitude, real.phase];
  },
});
