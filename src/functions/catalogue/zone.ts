import { zone } from '../../method/zone/zone.ts';
import { convert } from '../../units/convert.ts';
import { number } from '../declare/argument.ts';
import { declare } from '../declare/declare.ts';
import { MICROMETRE, displacementUnit, notPeakToPeak } from './displacementUnit.ts';
import { speed } from './shared.ts';

export const ZONE = declare({
  id: 'ZONE',
  description: 'Evaluation zone of a shaft vibration relative to the bearing (ISO 7919-3 / ISO 20816-3).',
  arguments: [
    number('displacement', 'positive', 'Shaft vibration, peak-to-peak.'),
    speed,
    displacementUnit('unit', 'Unit of the displacement; "um" if left out.'),
  ],
  result: 'text',
  resultDescription: 'A, B, C or D; a value on a boundary is in the better zone.',
  example: { formula: '=TRIPDRIFT.ZONE(5,3600,"mil")', result: 'B' },
  native:
    'IF(displacement*unit<=4800/SQRT(speed),"A",IF(displacement*unit<=9000/SQRT(speed),"B",IF(displacement*unit<=13200/SQRT(speed),"C","D")))',
  run: (displacement, n, unit) =>
    notPeakToPeak('Unit', unit) ?? zone(convert(displacement, unit, MICROMETRE), n),
});
