import { displacementFromAcceleration, displacementFromVelocity } from '../../method/sinusoid.ts';
import { convertDetection } from '../../units/detection.ts';
import { number, type UnitArgument } from '../declare/argument.ts';
import { declare } from '../declare/declare.ts';
import { type FunctionError, refused } from '../functionError.ts';
import { parseUnit } from '../../units/parse.ts';
import { type Unit, convert } from '../../units/unit.ts';

const such = '"mil", "um" or "mV/mil"';

export const CONVERTUNIT = declare({
  id: 'CONVERTUNIT',
  description: 'Value in another unit of displacement, sensitivity, velocity or acceleration.',
  arguments: [
    number('value', 'any', 'Value to convert.'),
    { kind: 'unit', name: 'from', such, description: 'Its unit, such as "mil", "mV/mil", "in/s" or "g".' },
    { kind: 'unit', name: 'to', such, description: 'Unit of the result, of the same kind.' },
  ],
  result: 'number',
  resultDescription:
    'The value in the unit "to". Peak-to-peak, 0-to-peak and rms are not converted into one another.',
  example: { formula: '=TRIPDRIFT.CONVERTUNIT(5,"mil","um")', result: '127' },
  native: 'value*from/to',
  run: (value, from, to) => {
    if (from.dimension !== to.dimension)
      return refused(`To measures ${to.dimension}, From ${from.dimension}: enter units of one kind.`);
    if (to.detection !== undefined && to.detection !== from.detection) {
      return refused(
        `To is ${to.detection}, From ${from.detection ?? 'says none'}: name the same one in both, or none.`,
      );
    }
    return convert(value, from, to);
  },
});

/** µm, in which the method gives zone boundaries. */
export const MICROMETRE = parseUnit('um') as Unit;

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

/** A unit of peak-to-peak displacement; µm if left out. */
export function displacementUnit(name: string, description: string) {
  return {
    kind: 'unit',
    name,
    dimensions: ['displacement'],
    such: '"mil", "um" or "mm"',
    otherwise: 'um',
    description,
  } as const satisfies UnitArgument;
}

/** Refuses a unit that names a detection other than peak-to-peak; `undefined` where it is fine. */
export function notPeakToPeak(name: string, { detection }: Unit): FunctionError | undefined {
  if (detection === undefined || detection === 'p-p') return undefined;
  return refused(`${name} is ${detection}: displacement is peak-to-peak here, leave "${detection}" out.`);
}
