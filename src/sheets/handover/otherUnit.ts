import { parseUnit } from '../../units/parse.ts';
import type { Unit } from '../../units/unit.ts';

/** The unit that people beside the panel may think in, and how to get there. */
export interface OtherUnit {
  readonly text: string;
  /** A cell's value in it, as a formula's end: `*25.4`. */
  readonly formula: string;
  readonly of: (value: number) => number;
}

const pairs: Readonly<Record<string, readonly [metric: string, imperial: string]>> = {
  displacement: ['µm', 'mil'],
  velocity: ['mm/s', 'in/s'],
};

/** The other unit of a displacement or velocity: mil beside µm, in/s beside mm/s and the other way; none for the rest. */
export function otherUnitOf(unit: string | null): OtherUnit | null {
  const own = unit === null ? undefined : parseUnit(unit);
  const pair = own && pairs[own.dimension];
  if (!own || !pair) return null;
  const [metric, imperial] = pair.map((text) => parseUnit(text));
  if (!metric || !imperial) return null;
  return own.factor === imperial.factor ? into(own, metric, pair[0]) : into(own, imperial, pair[1]);
}

/** The ratio above 1 is the one that is a short decimal number, so it carries no rounding. */
function into(from: Unit, to: Unit, text: string): OtherUnit {
  if (from.factor >= to.factor) {
    const ratio = from.factor / to.factor;
    return { text, formula: `*${ratio}`, of: (value) => value * ratio };
  }
  const ratio = to.factor / from.factor;
  return { text, formula: `/${ratio}`, of: (value) => value / ratio };
}
