import type { TableColumn } from '../columnSpec.ts';
import { aboveZero, notNegative, probeVolts } from './ranges.ts';
import { notValue } from './understoodAs.ts';

/** The zero of a position and its direction, and the speed of the shaft. */
export const position = {
  zeroMeasured: {
    name: 'measured zero voltage',
    also: ['zero voltage measured', 'zero voltage', 'as-found zero voltage'],
    holds: 'number',
    dimensions: ['voltage'],
    usualUnit: 'V',
    protective: true,
    understood: {
      matter: 'quantity',
      named: [
        ['zero voltage', 'measured'],
        ['zero voltage', 'as found'],
      ],
      not: notValue,
    },
    help: 'The gap voltage that was measured at the zero position.',
    entry: {
      sample: '-10.2',
      meaning: 'Axial only: voltage measured at the mechanical zero of the position.',
      ...probeVolts,
    },
  },
  zeroUncertainty: {
    name: 'zero voltage uncertainty',
    also: [
      'uncertainty of zero voltage',
      'uncertainty of the zero voltage',
      'measured zero voltage uncertainty',
    ],
    holds: 'number',
    dimensions: ['voltage'],
    usualUnit: 'V',
    protective: true,
    understood: { matter: 'quantity', named: [['zero voltage', 'uncertainty']], not: ['as left'] },
    help: 'By how much the measured zero voltage may be off.',
    entry: {
      sample: '0.1',
      meaning:
        'Axial only: expanded uncertainty of the measured zero voltage, in V, at the same coverage. Blank: the zero counts as exact.',
      allowed: notNegative,
    },
  },
  direction: {
    name: 'positive direction',
    also: ['direction', 'normal direction'],
    holds: 'choice',
    protective: true,
    help: 'Which way the position counts as positive: toward the probe, or away from it.',
    entry: {
      sample: 'toward',
      meaning: 'Axial only: whether moving toward the probe or away from it counts as positive.',
      allowed: { words: ['toward', 'away'] },
    },
  },
  speed: {
    name: 'speed',
    also: ['rated speed', 'running speed', 'shaft speed'],
    holds: 'number',
    dimensions: ['frequency'],
    usualUnit: 'r/min',
    understood: { matter: 'quantity', named: [['speed']] },
    help: 'The running speed of the shaft.',
    entry: {
      sample: '8950',
      meaning: 'Running speed, for the zones of shaft vibration.',
      allowed: aboveZero,
    },
  },
} as const satisfies Record<string, TableColumn>;
