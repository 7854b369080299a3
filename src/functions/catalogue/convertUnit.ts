import { convert } from '../../units/convert.ts';
import { number } from '../declare/argument.ts';
import { declare } from '../declare/declare.ts';
import { refused } from '../functionError.ts';

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
