import type { Block } from '../blocks/block.ts';
import type { BlockContext } from '../blocks/context.ts';
import { headerKey } from '../../tables/header.ts';
import type { Field } from '../fields/field.ts';
import type { NotedUnit } from '../fields/notes.ts';
import type { StatedZeroToPeak } from '../fields/otherDetection.ts';
import { axisOf } from '../vocabulary/valueWords.ts';

/** One reading of a block's records: all of it, or one of the two probes that each of its records holds. */
export interface Lane {
  /** Its number in the workbook. */
  readonly id: number;
  readonly block: Block;
  readonly context: BlockContext;
  /** Units stated in texts, nearest first. */
  readonly noted: readonly { readonly unit: NotedUnit; readonly scope: 'title' | 'note' | 'legend' }[];
  /** Texts on its sheet or a legend that say zero to peak. */
  readonly zeroToPeak: readonly StatedZeroToPeak[];
  readonly fields: readonly Field[];
  /** The probe of each record that it holds, and its fellow: `X` of `X` and `Y`. */
  readonly axis: { readonly name: string; readonly other: string } | null;
  /** Fields that stand for one of the two probes alone. */
  readonly ofAxis: ReadonlySet<Field>;
}

interface Split {
  readonly field: Field;
  readonly name: string;
  readonly pairs: readonly (readonly [string, 0 | 1])[];
  /** The header without the name of the probe. */
  readonly stem: string;
}

/** The fields of the two probes, where each record of a block holds two; `undefined` where it holds one. */
export function axesOf(
  fields: readonly Field[],
): readonly [Lane['axis'] & object, ReadonlySet<Field>][] | undefined {
  const splits = fields.flatMap((field) => splitOf(field) ?? []);
  const votes = new Map<string, Map<string, [Split?, Split?]>>();
  for (const split of splits) {
    for (const [pair, at] of split.pairs) {
      const stems = votes.get(pair) ?? new Map<string, [Split?, Split?]>();
      votes.set(pair, stems);
      const sides = stems.get(split.stem) ?? [];
      sides[at] ??= split;
      stems.set(split.stem, sides);
    }
  }
  let best: readonly (readonly [Split, Split])[] = [];
  for (const stems of votes.values()) {
    const both = [...stems.values()].flatMap(([one, other]) => (one && other ? [[one, other] as const] : []));
    if (both.length > best.length) best = both;
  }
  const [first] = best;
  const counted = best.some(
    ([one]) =>
      one.field.concepts.has('sensitivity') ||
      one.field.units.some(({ stated }) => stated.unit?.dimension.includes('/')),
  );
  if (!first || !counted) return undefined;
  const [one, other] = first;
  return [
    [{ name: one.name, other: other.name }, new Set(best.map(([side]) => side.field))],
    [{ name: other.name, other: one.name }, new Set(best.map(([, side]) => side.field))],
  ];
}

/** The name of a probe in a header: a part by itself, or the first or last word of one. */
function splitOf(field: Field): Split | undefined {
  const names = field.parts.map(({ name, text }) => (name === '' ? text : name));
  for (let at = names.length - 1; at >= 0; at--) {
    const name = names[at] ?? '';
    const whole = axisOf(name);
    const rest = names.filter((_, index) => index !== at);
    if (whole && rest.length > 0)
      return { field, name: whole.name, pairs: whole.pairs, stem: rest.map(headerKey).join(' ') };
    const words = name.split(/[\s_-]+/u);
    if (words.length < 2) continue;
    for (const [word, left] of [
      [words.at(-1) ?? '', words.slice(0, -1)],
      [words[0] ?? '', words.slice(1)],
    ] as const) {
      const axis = /^[\p{L}]$|^\d\d[LR]$/iu.test(word) ? axisOf(word) : undefined;
      if (axis)
        return {
          field,
          name: axis.name,
          pairs: axis.pairs,
          stem: [...rest.map(headerKey), headerKey(left.join(' '))].join(' '),
        };
    }
  }
  return undefined;
}
