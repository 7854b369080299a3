import {
  displacementFromAcceleration,
  displacementFromVelocity,
} from '../../method/sinusoid/displacement.ts';
import { convert } from '../../units/convert.ts';
import { convertDetection } from '../../units/detection.ts';
import { number } from '../declare/argument.ts';
import { declare } from '../declare/declare.ts';
import { MICROMETRE, displacementUnit, notPeakToPeak } from './displacementUnit.ts';

export const DISPLACEMENT = declare({
  id: 'DISPLACEMENT',
  description: 'Peak-to-peak displacement of a sinusoidal velocity or acceleration at one frequency.',
  arguments: [
    number('amplitude', 'notNegative', '0-to-peak amplitude; rms or peak-to-peak where the unit says so.'),
    {
      kind: 'unit',
      name: 'unit',
      dimensions: ['velocity', 'acceleration'],
      such: '"mm/s", "in/s" or "g"',
      description: 'Unit of the amplitude, such as "mm/s", "in/s", "g" or "mm/s rms".',
    },
    number('frequency', 'positive', 'Frequency of the vibration.'),
    {
      kind: 'unit',
      name: 'frequencyUnit',
      dimensions: ['frequency'],
      such: '"Hz" or "r/min"',
      otherwise: 'Hz',
      description: '"Hz" (if left out) or "r/min".',
    },
    displacementUnit('to', 'Unit of the result; "um" if left out.'),
  ],
  result: 'number',
  resultDescription: 'Displacement, peak-to-peak. It holds for a sinusoid alone.',
  example: { formula: '=TRIPDRIFT.DISPLACEMENT(4.7877872,"mm/s",60)', result: '25.3999999784035' },
  run: (amplitude, unit, frequency, frequencyUnit, to) => {
    const peak = convertDetection(amplitude * unit.factor, unit.detection ?? '0-p', '0-p');
    const hertz = frequency * frequencyUnit.factor;
    const metres =
      unit.dimension === 'velocity'
        ? displacementFromVelocity(peak / 1000, hertz)
        : displacementFromAcceleration(peak, hertz);
    return notPeakToPeak('To', to) ?? convert(metres * 1_000_000, MICROMETRE, to);
  },
});
