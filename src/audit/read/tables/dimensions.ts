import type { Dimension } from '../../../units/parse.ts';

/** Dimensions of a sensitivity: an electrical signal per unit of what is measured. */
export const sensitivity: readonly Dimension[] = [
  'voltage/displacement',
  'voltage/velocity',
  'voltage/acceleration',
  'voltage/percent',
  'current/displacement',
  'current/velocity',
  'current/acceleration',
  'current/percent',
];

/** Dimensions of a level: what a channel indicates and its setpoints are in. */
export const measurand: readonly Dimension[] = ['displacement', 'velocity', 'acceleration', 'percent'];

/** Dimensions of a growth; a bare level means per day. */
export const growth: readonly Dimension[] = [
  'displacement/time',
  'velocity/time',
  'acceleration/time',
  'percent/time',
  ...measurand,
];
