import { cellText, isBlank } from '../../../../cells/cell.ts';
import type { Sheet } from '../../../../cells/sheet.ts';
import { tagKey } from '../../tables/tagKey.ts';
import { isHiddenRecord, recordsOf } from '../blocks/block.ts';
import type { Field } from '../fields/field.ts';
import { cellOfBlock } from '../fields/valueFacts.ts';
import { meaning } from '../meanings/meaning.ts';
import { isTotal } from '../readings/blanks.ts';
import type { Evidence } from '../standing/evidence.ts';
import { signsOf, standingOf } from '../standing/certainties.ts';
import type { Claim } from './claim.ts';
import type { Lane } from './lane.ts';
import { unitSource } from './units.ts';

/** A field that could name the records of a lane, with what it holds. */
interface Candidate {
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

/** Part of texts that two fields have to share to name the same things. */
const shared = 0.5;
/** Part of texts that have to differ in a field that names records. */
const mostly = 0.9;

/** Which field names the records of each lane: by its word, by how its texts differ, and by other lanes that have the same. */
export function tagClaims(
  lanes: readonly {
    readonly lane: Lane;
    readonly taken: ReadonlySet<Field>;
    readonly machine: Field | null;
  }[],
  sheets: ReadonlyMap<string, Sheet>,
): Map<Lane, Claim> {
  const named = lanes.map(({ lane, taken, machine }) => ({
    lane,
    taken,
    machine,
    candidates: lane.fields.flatMap((field) =>
      taken.has(field) || wordOf(field) === 0 ? [] : (candidateOf(lane, field, machine, sheets) ?? []),
    ),
  }));
  const all = named.map(({ lane, taken, machine, candidates }) => {
    const elsewhere = named
      .filter((other) => other.lane.block !== lane.block)
      .flatMap((other) => other.candidates);
    const more = lane.fields.filter(
      (field) =>
        !taken.has(field) &&
        wordOf(field) === 0 &&
        (candidates.length === 0 || mayShare(lane, field, elsewhere, sheets)),
    );
    return {
      lane,
      candidates: [
        ...candidates,
        ...more.flatMap((field) => candidateOf(lane, field, machine, sheets) ?? []),
      ],
    };
  });
  const claims = new Map<Lane, Claim>();
  for (const { lane, candidates } of all) {
    const others = all
      .filter((other) => other.lane.block !== lane.block)
      .flatMap((other) => other.candidates.filter(({ word }) => word > 0));
    const claim = choose(lane, candidates, others);
    if (claim) claims.set(lane, claim);
  }
  return claims;
}

/** How strongly a field's header names tags. */
function wordOf({ standard, concepts }: Field): Candidate['word'] {
  const name = standard.find(({ id }) => id === 'tag');
  if (name) return name.exact ? 3 : 2;
  const strength = concepts.get('tag')?.strength;
  return strength === 'strong' ? 2 : strength === 'weak' ? 1 : 0;
}

/** Texts of a field by which it is told whether it can have the tags of another list. */
const sampled = 60;

/** Whether some of the first texts of a field stand among those that other lists name their records by. */
function mayShare(
  { block }: Lane,
  field: Field,
  others: readonly Candidate[],
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

function candidateOf(
  lane: Lane,
  field: Field,
  machine: Field | null,
  sheets: ReadonlyMap<string, Sheet>,
): Candidate | undefined {
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
    unique: filled - pairs.size <= Math.max(filled > 3 ? 1 : 0, filled * (1 - mostly)),
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

function shareOf(one: ReadonlySet<string>, other: ReadonlySet<string>): number {
  const [small, large] = one.size <= other.size ? [one, other] : [other, one];
  let both = 0;
  for (const text of small) if (large.has(text)) both++;
  return small.size === 0 ? 0 : both / small.size;
}

function choose(
  lane: Lane,
  candidates: readonly Candidate[],
  others: readonly Candidate[],
): Claim | undefined {
  const scored = candidates.map((candidate) => {
    const { field } = candidate;
    const best = others
      .map((other) => ({ other, share: shareOf(candidate.texts, other.texts) }))
      .toSorted((one, two) => two.share - one.share || two.other.word - one.other.word)[0];
    const least = best ? Math.min(candidate.texts.size, best.other.texts.size) : 0;
    const isShared =
      best !== undefined && best.share >= shared && Math.round(best.share * least) >= Math.min(2, least);
    return {
      ...candidate,
      best: isShared ? best : undefined,
      counting:
        field.values.counting || (candidate.counts && candidate.word < 3 && field.values.greatest <= 200),
    };
  });
  const usable = scored.filter(
    ({ word, best, unique }) =>
      word > 0 || (unique && (best !== undefined || candidates.every((one) => one.word === 0))),
  );
  const sorted = usable.toSorted(
    (one, two) =>
      Number(one.counting) - Number(two.counting) ||
      Number(two.word === 3 && two.unique) - Number(one.word === 3 && one.unique) ||
      Number(two.unique) - Number(one.unique) ||
      Number(two.best !== undefined) - Number(one.best !== undefined) ||
      two.word - one.word ||
      one.field.place.at - two.field.place.at,
  );
  const [first, second] = sorted;
  if (!first) return undefined;
  const { field, word, best, unique, counting } = first;
  const isRival =
    second !== undefined &&
    second.word === word &&
    word < 3 &&
    second.unique === unique &&
    second.counting === counting &&
    (second.best !== undefined) === (best !== undefined) &&
    second.word > 0;
  const name = field.standard.find(({ id }) => id === 'tag');
  const fact = field.concepts.get('tag');
  const said: Evidence[] = name
    ? [{ is: 'standard header', header: field.text, exact: name.exact }]
    : fact
      ? [{ is: 'word', concept: 'tag', strength: fact.strength, text: fact.text, covers: fact.covers }]
      : [];
  const evidence: Evidence[] = [
    ...said,
    ...(unique ? [{ is: 'unique', texts: first.texts.size } as const] : []),
    ...(best
      ? [
          {
            is: 'shared',
            with: best.other.lane.block.sheet.name,
            texts: Math.round(best.share * Math.min(first.texts.size, best.other.texts.size)),
            of: first.texts.size,
          } as const,
        ]
      : []),
    ...(counting ? [{ is: 'counting' } as const] : []),
    ...(field.place.hidden ? [{ is: 'hidden', what: 'column' } as const] : []),
    ...(isRival && !sameJoin(first, second)
      ? [
          {
            is: 'rival',
            header: second.field.text,
            place: {
              sheet: lane.block.sheet.name,
              row: second.field.place.header.at(-1)?.row ?? 0,
              column: second.field.place.header.at(-1)?.column ?? 0,
            },
            hidden: false,
          } as const,
        ]
      : []),
  ];
  return {
    meaning: 'tag',
    field,
    unit: unitSource(lane, field, meaning('tag')),
    evidence,
    standing: standingOf('tag', signsOf(evidence)),
    rivals: sorted
      .slice(1)
      .filter((one) => one.word > 0)
      .map((one) => one.field),
  };
}

/** Whether two columns name the records alike, so that it makes no difference by which they are joined. */
function sameJoin(
  one: { readonly unique: boolean; readonly word: number; readonly best?: unknown },
  other: { readonly unique: boolean; readonly word: number; readonly best?: unknown },
): boolean {
  return one.unique && other.unique && one.best === undefined && other.best === undefined;
}
