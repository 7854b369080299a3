import { compose } from './compose.ts';
import { takeDetection } from './detectionWords.ts';
import { powersOf } from './expression.ts';
import { frequencyOf } from './frequency.ts';
import { tidy } from './tidy.ts';
import type { Unit } from './unit.ts';

export type { Detection, Dimension, Quantity, Unit } from './unit.ts';

/** Distinct texts kept; a workbook has a few dozen, and a hostile one must not fill the memory. */
const KEPT = 2000;
const known = new Map<string, Unit | undefined>();

/**
 * The unit a text names, in any case and spelling people use: `mils`, `mV per mil`, `V DC`, `in/s pk`, `µm p-p`.
 * `undefined` for any other text. Factors are exact definitions: `atoms.ts`. Each distinct text is read once.
 */
export function parseUnit(text: string): Unit | undefined {
  if (known.has(text)) return known.get(text);
  const unit = read(text);
  if (known.size < KEPT && text.length < KEPT) known.set(text, unit);
  return unit;
}

function read(text: string): Unit | undefined {
  const tidied = tidy(text);
  const detected = tidied === undefined ? undefined : takeDetection(tidied);
  if (detected === undefined) return undefined;
  const { rest, detection } = detected;
  const unit = frequencyUnit(rest) ?? quantityOrSignal(rest);
  return unit && (detection === undefined ? unit : { ...unit, detection });
}

function frequencyUnit(rest: string): Unit | undefined {
  const frequency = frequencyOf(rest);
  return frequency && { ...frequency, dimension: 'frequency' };
}

function quantityOrSignal(rest: string): Unit | undefined {
  const powers = powersOf(rest);
  return powers && compose(powers);
}
