import { cellText, isBlank } from '../../../../cells/cell.ts';
import type { Sheet } from '../../../../cells/sheet.ts';
import { tagKey } from '../../tables/tagKey.ts';
import { isHiddenRecord, recordsOf } from '../blocks/block.ts';
import type { Field } from '../fields/field.ts';
import { cellOfBlock } from '../fields/valueFacts.ts';
import { isTotal } from '../readings/cellValue.ts';
import type { Lane } from './lane.ts';

/** A field that could name the records of a lane, with what it holds. */
export interface TagCandidate {
  readonly lane: Lane;
  readonly field: Field;
  readonly texts: ReadonlySet<string>;
  readonly filled: number;
  /** 3 the standard header, 2 another one or a strong word, 1 a weak word, 0 none. */
  readonly word: 0 | 1 | 2 | 3;
  /** Nothing but small numbers. */
  readonly counts: boolean;
  /** Told apart by the machine beside it, the texts are unique. */
  readonly unique: boolean;
}

/** Part of texts that have to differ in a field that names records. */
const mostly = 0.9;

/** How strongly a field's header names tags. */
export function wordOf({ standard, concepts }: Field): TagCandidate['word'] {
  const name = standard.find(({ id }) => id === 'tag');
  if (name) return name.exact ? 3 : 2;
  const strength = concepts.get('tag')?.strength;
  return strength === 'strong' ? 2 : strength === 'weak' ? 1 : 0;
}

/** Texts of a field by which it is told whether it can have the tags of another list. */
const sampled = 60;

/** Whether some of the first texts of a field stand among those that other lists name their records by. */
export function mayShare(
  { block }: Lane,
  field: Field,
  others: readonly TagCandidate[],
  sheets: ReadonlyMap<string, Sheet>,
): boolean {
  if (others.length === 0 || field.values.texts === 0) return false;
  let seen = 0;
  for (const record of recordsOf(block)) {
    const text = cellText(cellOfBlock(block, sheets, field.place, record));
    if (text === '') continue;
    const key = tagKey(text);
    if (others.some(({ texts }) => texts.has(key))) return true;
    if (++seen >= sampled) return false;
  }
  return false;
}

/** A field as one that could name the records of its lane; `undefined` where it can't. */
export function candidateOf(
  lane: Lane,
  field: Field,
  machine: Field | null,
  sheets: ReadonlyMap<string, Sheet>,
): TagCandidate | undefined {
  const { values, units, concepts, standard } = field;
  if (values.filled === 0 || values.dates > 0 || units.length > 0) return undefined;
  const isStandard = standard.some(({ id }) => id === 'tag');
  if (standard.length > 0 && !isStandard && !standard.some(({ id }) => id === 'location')) return undefined;
  const word = wordOf(field);
  if (word < 2 && values.kinds * 2 > values.texts) return undefined;
  if (word === 0 && values.distinct * 2 < values.compared) return undefined;
  if (
    word === 0 &&
    ((concepts.size > 0 && !concepts.has('ordinal')) || values.lettered * 2 < values.compared)
  )
    return undefined;
  if (
    word < 3 &&
    (['machine', 'person', 'remark', 'kind'] as const).some(
      (concept) => concepts.get(concept)?.strength === 'strong',
    ) &&
    word < 2
  )
    return undefined;
  const texts = new Set<string>();
  const pairs = machine ? new Set<string>() : texts;
  let filled = 0;
  let small = 0;
  let of = '';
  for (const record of recordsOf(lane.block)) {
    const cell = cellOfBlock(lane.block, sheets, field.place, record);
    if (isBlank(cell) || isHiddenRecord(lane.block, record)) continue;
    const text = cellText(cell);
    if (isTotal(text) || standsAlone(lane, field, record, sheets)) continue;
    if (/^\d{1,3}$/u.test(text)) small++;
    if (machine) {
      const own = cellText(cellOfBlock(lane.block, sheets, machine.place, record));
      of = own === '' ? of : own;
    }
    filled++;
    const key = tagKey(text);
    texts.add(key);
    if (machine) pairs.add(`${of}\n${key}`);
  }
  if (filled === 0) return undefined;
  return {
    lane,
    field,
    texts,
    filled,
    word,
    counts: small === filled,
    unique: filled - pairs.size <= Math.max(filled > 2 ? 1 : 0, filled * (1 - mostly)),
  };
}

/** Whether a text is all that stands in its record, as a heading does. */
function standsAlone(
  { block, fields }: Lane,
  field: Field,
  record: number,
  sheets: ReadonlyMap<string, Sheet>,
): boolean {
  return fields.every((other) => other === field || isBlank(cellOfBlock(block, sheets, other.place, record)));
}
