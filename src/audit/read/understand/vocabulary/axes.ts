import { headerKey } from '../../tables/header.ts';
import { axes } from './valueWords.ts';

/** A word for one of two probes of a place, as it stands, with its pair and its place in it. */
export interface Axis {
  readonly name: string;
  /** Key of the pair, and 0 or 1 in it: `X` is the first of `X Y`. */
  readonly pairs: readonly (readonly [pair: string, at: 0 | 1])[];
}

const known = new Map<string, [string, 0 | 1][]>();
for (const [first, second] of axes) {
  const pair = `${headerKey(first)} ${headerKey(second)}`;
  for (const [word, at] of [
    [first, 0],
    [second, 1],
  ] as const) {
    const key = headerKey(word);
    known.set(key, [...(known.get(key) ?? []), [pair, at]]);
  }
}

/** The probe that a text names where it stands alone: `X`, `Probe Y`, `45L`. */
export function axisOf(text: string): Axis | undefined {
  const pairs = known.get(headerKey(text));
  return pairs && { name: text.trim(), pairs };
}
