import type { Field } from '../fields/field.ts';
import { meaning, type Meaning } from '../meaning.ts';
import type { Evidence } from '../standing/evidence.ts';
import { headerKey } from '../../tables/header.ts';
import { grades, pairs, surePairs } from '../vocabulary/pairWords.ts';
import { tokensOf } from '../vocabulary/lexicon.ts';
import type { Lane } from './lane.ts';
import { isSensitivity } from './isSensitivity.ts';
import { wordEvidence } from './sensitivities.ts';
import { fitsMeaning, unitSource } from './units.ts';

/** A field that could have a meaning, before rivals are compared. */
export interface Candidate {
  readonly field: Field;
  readonly evidence: readonly Evidence[];
  /** Told by its words to be another: an old or a proposed one. */
  readonly aside?: boolean;
}

/** Two columns that belong together as alert and danger, with what speaks for each. */
interface Pair {
  readonly fields: readonly [low: Field, high: Field];
  /** Their words say an alarm by themselves. */
  readonly sure: boolean;
  /** All grades, where there are more than two. */
  readonly more?: readonly Field[];
  readonly alert: readonly Evidence[];
  readonly danger: readonly Evidence[];
}

export function setpoints(lane: Lane, fields: readonly Field[], id: 'alert' | 'danger'): Candidate[] {
  const wanted = meaning(id);
  const standard = standards(fields, wanted);
  const pair = pairOf(fields);
  if (pair?.more && standard.length === 0) {
    const rivals = pair.more.filter((field) => field !== pair.fields[id === 'alert' ? 0 : 1]);
    return [pair.fields[id === 'alert' ? 0 : 1], ...rivals].map((field) => ({ field, evidence: [] }));
  }
  const other = pair?.sure === true ? pair.fields[id === 'alert' ? 1 : 0] : undefined;
  const words = fields.filter(
    (field) =>
      field !== other &&
      field.standard.length === 0 &&
      !isSensitivity(field) &&
      names(field, wanted) &&
      field.values.numbers + field.values.odd > 0,
  );
  const rest = words.filter((field) => fits(lane, field, wanted));
  const byWord = rest.map((field): Candidate => ({
    field,
    evidence: wordEvidence(field, [id]),
    aside: isAside(field),
  }));
  if (standard.length > 0 || byWord.length > 0) return [...standard, ...byWord];
  const own = pair && fields.find((field) => field === pair.fields[id === 'alert' ? 0 : 1]);
  return own ? [{ field: own, evidence: [] }] : [];
}

function isAside({ concepts }: Field): boolean {
  return concepts.get('proposed')?.strength === 'strong' || concepts.get('old')?.strength === 'strong';
}

/** The only field that is called a danger, beside one that is called a first grade. */
function soleDanger(fields: readonly Field[], first: Field): Field | undefined {
  const dangers = fields.filter(
    (field) =>
      field !== first &&
      field.values.numbers > 0 &&
      (field.concepts.get('danger')?.strength === 'strong' ||
        field.standard.some(({ id }) => id === 'danger')) &&
      !isSensitivity(field),
  );
  return dangers.length === 1 ? dangers[0] : undefined;
}

/**
 * Two columns named by the words of a pair, and by nothing else; or the first grade beside the only danger. Of three and
 * more grades a person has to say which two count.
 */
export function pairOf(fields: readonly Field[]): Pair | undefined {
  const key = (field: Field): string => {
    const name = field.parts.findLast((part) => part.name !== '')?.name ?? '';
    return tokensOf(name)
      .filter(
        (token) =>
          !['trip', 'alarm', 'alert', 'setpoint', 'set', 'point', 'limit'].includes(token) ||
          /^(alarm|setpoint|limit|alert)\s*\d$/iu.test(name),
      )
      .join('');
  };
  for (const [low, high] of pairs) {
    const one = fields.find((field) => key(field) === headerKey(low) && field.values.numbers > 0);
    const other =
      fields.find((field) => key(field) === headerKey(high) && field.values.numbers > 0) ??
      (one && grades.has(low) ? soleDanger(fields, one) : undefined);
    if (!one || !other) continue;
    const isSaid = key(other) !== headerKey(high);
    const further = isSaid
      ? []
      : beyond(headerKey(high)).flatMap((next) => fields.find((field) => key(field) === next) ?? []);
    const last = further.at(-1) ?? other;
    const sure = further.length === 0 && (isSaid || surePairs.has(low));
    const evidence: Evidence = { is: 'pair', low, high: isSaid || last !== other ? last.text : high, sure };
    return {
      fields: [one, last],
      sure,
      ...(further.length > 0 ? { more: [one, other, ...further] } : {}),
      alert: [evidence],
      danger: [evidence],
    };
  }
  return undefined;
}

/** The names of the grades above the second one: `alarm3` and `alarm4` above `alarm2`. */
function beyond(high: string): string[] {
  return high.endsWith('2')
    ? ['3', '4'].map((digit) => high.slice(0, -1) + digit)
    : [`${high}${high.slice(-1)}`];
}

/** Fields with the standard header of a meaning: as of today, those with the exact one before others where it holds a text. */
function standards(fields: readonly Field[], wanted: Meaning): Candidate[] {
  const all = fields.flatMap((field) =>
    field.standard.filter(({ id }) => id === wanted.id).map((name) => ({ field, name })),
  );
  const exact = all.filter(({ name }) => name.exact);
  const chosen = exact.length > 0 && (wanted.holds === 'text' || wanted.holds === 'choice') ? exact : all;
  const fitting = chosen.filter(
    ({ field, name }) =>
      exact.length === 0 ||
      name.exact ||
      field.units.length === 0 ||
      field.units.some((unit) => fitsMeaning(unit.stated, wanted)),
  );
  const seen = new Set<Field>();
  return fitting.flatMap(({ field, name }) => {
    if (seen.has(field)) return [];
    seen.add(field);
    return [{ field, evidence: [{ is: 'standard header', header: field.text, exact: name.exact }] }];
  });
}

function names(field: Field, { named: lists, not }: Meaning): boolean {
  const has = (concept: Parameters<typeof field.concepts.has>[0]) => field.concepts.has(concept);
  return lists.some((list) => list.every(has)) && !not.some(has);
}

function fits(lane: Lane, field: Field, wanted: Meaning): boolean {
  if (wanted.dimensions.length === 0) return true;
  const source = unitSource(lane, field, wanted);
  if (source.fixed) return fitsMeaning(source.fixed, wanted);
  const cells = [...field.values.cellUnits.values()];
  return cells.length === 0 || cells.some((unit) => fitsMeaning(unit, wanted));
}

/** Whether a column named by a weak word holds kinds of channels, and so something else than its word says. */
function holdsKinds({ values, concepts }: Field, wanted: Meaning): boolean {
  return (
    wanted.id === 'machine' && concepts.get('machine')?.strength === 'weak' && values.kinds * 2 > values.texts
  );
}

export function named(fields: readonly Field[], wanted: Meaning): Candidate[] {
  const standard = standards(fields, wanted);
  if (standard.length > 0) return standard;
  return fields
    .filter(
      (field) =>
        field.standard.length === 0 &&
        names(field, wanted) &&
        holds(field, wanted) &&
        !holdsKinds(field, wanted) &&
        !(wanted.matter !== 'text' && isSensitivity(field)),
    )
    .map((field) => ({
      field,
      evidence: wordEvidence(field, wanted.named.flat()),
      aside: wanted.holds === 'number' && isAside(field),
    }));
}

/** Whether the cells of a field are of the kind that a meaning holds. */
function holds({ values, units }: Field, wanted: Meaning): boolean {
  if (values.filled === 0) return false;
  if (wanted.holds === 'date')
    return (
      values.dates > 0 ||
      values.texts > 0 ||
      (values.numbers > 0 && values.least > 18_000 && values.greatest < 73_051)
    );
  if (wanted.holds !== 'number')
    return (
      (wanted.numbered || values.numbers * 2 <= values.filled) &&
      units.length === 0 &&
      values.dates === 0 &&
      values.units * 2 < Math.max(1, values.texts)
    );
  const stated = units[0]?.stated;
  if (stated && !fitsMeaning(stated, wanted)) return false;
  return values.numbers > 0 && values.dates === 0;
}
