import type { TableColumn } from '../columnSpec.ts';
import { notNegative } from './ranges.ts';
import { notValue } from './understoodAs.ts';

/** The ends of a current loop as measured. */
export const loop = {
  loopAtZero: {
    name: 'loop current at 0 %',
    also: ['current at 0 %', 'loop current at zero', 'measured loop current at 0 %'],
    holds: 'number',
    dimensions: ['current'],
    usualUnit: 'mA',
    protective: true,
    understood: { matter: 'quantity', named: [['loop zero']], not: notValue },
    help: 'The current of the loop at 0 % of its span, as measured; it should be 4 mA.',
    entry: {
      sample: '4.02',
      meaning:
        'Loop (4–20 mA) only: current measured at 0 % of the span. Both ends are needed; where the sensitivities are in mA they take the place of the measured one.',
      allowed: { from: 0.1, to: 25 },
    },
  },
  loopAtZeroUncertainty: {
    name: 'loop current at 0 % uncertainty',
    also: ['uncertainty of loop current at 0 %', 'uncertainty of the loop current at 0 %'],
    holds: 'number',
    dimensions: ['current'],
    usualUnit: 'mA',
    protective: true,
    understood: { matter: 'quantity', named: [['loop zero', 'uncertainty']] },
    help: 'By how much the current at 0 % may be off.',
    entry: {
      sample: '0.02',
      meaning: 'Loop only: expanded uncertainty of that current, in mA. Blank: it counts as exact.',
      allowed: notNegative,
    },
  },
  loopAtSpan: {
    name: 'loop current at 100 %',
    also: ['current at 100 %', 'loop current at span', 'measured loop current at 100 %'],
    holds: 'number',
    dimensions: ['current'],
    usualUnit: 'mA',
    protective: true,
    understood: { matter: 'quantity', named: [['loop span']], not: notValue },
    help: 'The current of the loop at 100 % of its span, as measured; it should be 20 mA.',
    entry: {
      sample: '19.9',
      meaning: 'Loop only: current measured at 100 % of the span.',
      allowed: { from: 0.1, to: 25 },
    },
  },
  loopAtSpanUncertainty: {
    name: 'loop current at 100 % uncertainty',
    also: ['uncertainty of loop current at 100 %', 'uncertainty of the loop current at 100 %'],
    holds: 'number',
    dimensions: ['current'],
    usualUnit: 'mA',
    protective: true,
    understood: { matter: 'quantity', named: [['loop span', 'uncertainty']] },
    help: 'By how much the current at 100 % may be off.',
    entry: {
      sample: '0.02',
      meaning: 'Loop only: expanded uncertainty of that current, in mA. Blank: it counts as exact.',
      allowed: notNegative,
    },
  },
} as const satisfies Record<string, TableColumn>;
