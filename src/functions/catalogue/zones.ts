import { zone, zoneLimit } from '../../method/zone.ts';
import { convert } from '../../units/unit.ts';
import { number } from '../declare/argument.ts';
import { declare } from '../declare/declare.ts';
import { MICROMETRE, displacementUnit, notPeakToPeak } from './units.ts';
import { speed } from './shared.ts';

export const ZONELIMIT = declare({
  id: 'ZONELIMIT',
  description:
    'Boundary between two evaluation zones of shaft vibration relative to the bearing (ISO 7919-3 / ISO 20816-3).',
  arguments: [
    {
      kind: 'choice',
      name: 'boundary',
      choices: ['A/B', 'B/C', 'C/D'],
      description: '"A/B", "B/C" or "C/D".',
    },
    speed,
    displacementUnit('unit', 'Unit of the result; "um" if left out.'),
  ],
  result: 'number',
  resultDescription: 'Displacement, peak-to-peak.',
  example: { formula: '=TRIPDRIFT.ZONELIMIT("B/C",3600)', result: '150' },
  native: {
    by: 'boundary',
    forms: {
      'A/B': '4800/SQRT(speed)/unit',
      'B/C': '9000/SQRT(speed)/unit',
      'C/D': '13200/SQRT(speed)/unit',
    },
  },
  run: (boundary, n, unit) =>
    notPeakToPeak('Unit', unit) ?? convert(zoneLimit(boundary, n), MICROMETRE, unit),
});

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
