import type { Sheet } from '../../../../cells/sheet.ts';
import type { Field } from '../fields/field.ts';
import { meaning } from '../meaning.ts';
import type { Evidence } from '../standing/evidence.ts';
import { signsOf, standingOf } from '../standing/certainties.ts';
import type { Claim } from './claim.ts';
import type { Lane } from './lane.ts';
import { candidateOf, mayShare, wordOf, type TagCandidate } from './tagCandidates.ts';
import { differByProbe, namesFirstAlone, probeField } from './probeField.ts';
import { unitSource } from './units.ts';

/** Part of texts that two fields have to share to name the same things. */
const shared = 0.5;
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
    const machine = lanes.find((one) => one.lane === lane)?.machine ?? null;
    const claim = choose(lane, candidates, others);
    const told = withProbe(lane, claim, machine, sheets) ?? claim;
    if (told) claims.set(lane, told);
  }
  return claims;
}

/** A tag of two columns, as bearing and direction, where no column names each record by itself. */
function withProbe(
  lane: Lane,
  single: Claim | undefined,
  machine: Field | null,
  sheets: ReadonlyMap<string, Sheet>,
): Claim | undefined {
  const probe = probeField(lane, sheets);
  const isUnique = single?.evidence.some(({ is }) => is === 'unique') === true;
  if (!probe || (isUnique && !namesFirstAlone(lane, single.field, probe, sheets))) return undefined;
  const names = [
    ...(single ? [single.field] : []),
    ...lane.fields.filter(({ concepts }) => concepts.has('tag') || concepts.has('location')),
  ];
  const field = names.find(
    (name) => name !== probe && name !== machine && differByProbe(lane, name, probe, machine, sheets),
  );
  if (!field) return undefined;
  const fact = field.concepts.get('tag') ?? field.concepts.get('location');
  const [first, second] = [...new Set(probe.values.samples.map(({ text }) => text))];
  const evidence: Evidence[] = [
    ...(fact
      ? [
          {
            is: 'word',
            concept: fact.concept,
            strength: fact.strength,
            text: fact.text,
            covers: fact.covers,
          } as const,
        ]
      : []),
    { is: 'axis', axis: first ?? '', other: second ?? '' },
    { is: 'unique', texts: field.values.filled },
    ...(field.place.hidden || probe.place.hidden ? [{ is: 'hidden', what: 'column' } as const] : []),
  ];
  return {
    meaning: 'tag',
    field,
    probe,
    unit: unitSource(lane, field, meaning('tag')),
    evidence,
    standing: standingOf('tag', signsOf(evidence)),
    rivals: [],
  };
}

function shareOf(one: ReadonlySet<string>, other: ReadonlySet<string>): number {
  const [small, large] = one.size <= other.size ? [one, other] : [other, one];
  let both = 0;
  for (const text of small) if (large.has(text)) both++;
  return small.size === 0 ? 0 : both / small.size;
}

function choose(
  lane: Lane,
  candidates: readonly TagCandidate[],
  others: readonly TagCandidate[],
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
    !(isPlace(second.field) && !isPlace(field)) &&
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

/** Whether a header names the place of a probe: beside a name for the probe itself it is none of the tag's rivals. */
function isPlace({ concepts }: Field): boolean {
  return concepts.get('location')?.strength === 'strong';
}
