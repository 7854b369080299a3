import type { Understood, UsualSize } from '../columnSpec.ts';
import type { Concept } from '../concepts.ts';

/** What headers speak of that hold no value of a channel, whatever quantity they name beside it. */
export const notValue: readonly Concept[] = [
  'deviation',
  'tolerance',
  'displacement limit',
  'uncertainty',
  'unit',
  'person',
  'remark',
  'date',
];

/** The same for levels: headers that name a setpoint, and mean something else of it. */
export const notLevel: readonly Concept[] = [
  ...notValue,
  'delay',
  'multiplier',
  'resolution',
  'counter',
  'sensitivity',
  'gap voltage',
  'voting',
  'other',
];

/** Levels of shaft vibration and position as they usually are. */
export const displacement: readonly UsualSize[] = [{ unit: 'mil', from: 0.3, to: 80 }];

/** A sensitivity, whichever of a channel's it is: that follows from its neighbours. */
export const anySensitivity: Understood = {
  matter: 'sensitivity',
  named: [['sensitivity']],
  not: notValue,
  sizes: [{ unit: 'mV/mil', from: 20, to: 1200 }],
};
