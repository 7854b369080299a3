import type { Concept } from '../vocabulary/word.ts';

/** Quantities with a unit: of a header path only the one named last holds. */
export const hardQuantities: ReadonlySet<Concept> = new Set<Concept>([
  'sensitivity',
  'alert',
  'danger',
  'full scale',
  'gap voltage',
  'zero voltage',
  'uncertainty',
  'speed',
  'delay',
  'reading',
  'date',
]);
