import { positive } from './range.ts';

/** Of a chain's nominal length, as fractions of it: between which it seems too long, or where negative too short. */
export interface LengthOff {
  /** The nearer and the farther from the nominal length. */
  readonly least: number;
  readonly most: number;
}

/** Beyond this part of the length the rough rule says nothing. */
const MOST_LENGTH = 1 / 5;
/** Percent of sensitivity for each percent of length: from as much to a third more. */
const PER_LENGTH = 4 / 3;
/** Two ratios are about the same where the smaller is at least this part of the larger. */
const ALIKE = 2 / 3;

/**
 * Roughly how much too long a chain is, from a sensitivity and a gap voltage that are off by about the same ratio: one
 * percent of length for one to one and a third percent of sensitivity. Sensitivities above 0 in one unit, gap voltages in
 * V with one sign. `'beyond'` where it would be more than a fifth, `undefined` where the two are not off alike or an input
 * is out of range. Source: a rough rule of practice, no source; a hint at what to look at, never a measurement.
 * Example: 180 of 200 mV/mil and −9 of −10 V → 7.5 to 10 % too long.
 */
export function lengthOff(
  measured: number,
  reference: number,
  gapVoltage: number,
  referenceGapVoltage: number,
): LengthOff | 'beyond' | undefined {
  const ratio = gapVoltage / referenceGapVoltage;
  if (!positive(measured) || !positive(reference) || !positive(ratio)) return undefined;
  const [off, gapOff] = [measured / reference - 1, ratio - 1];
  const [small, large] = [
    Math.min(Math.abs(off), Math.abs(gapOff)),
    Math.max(Math.abs(off), Math.abs(gapOff)),
  ];
  if (off * gapOff <= 0 || small < ALIKE * large) return undefined;
  const most = -off;
  if (Math.abs(most) > MOST_LENGTH * (1 + 1e-12)) return 'beyond';
  return { least: most / PER_LENGTH, most };
}
