import { convert } from '../../../../units/convert.ts';
import { parseUnit } from '../../../../units/parse.ts';
import type { Field } from '../fields/field.ts';
import { meaning, meanings, type Meaning, type MeaningId } from '../meanings/meaning.ts';
import type { Evidence } from '../standing/evidence.ts';
import { signsOf, standingOf } from '../standing/certainties.ts';
import { headerKey } from '../../tables/header.ts';
import { pairs, surePairs } from '../vocabulary/pairWords.ts';
import { tokensOf } from '../vocabulary/lexicon.ts';
import type { Claim, OpenField, Settled } from './claim.ts';
import type { Lane } from './lane.ts';
import { orderOf } from './order.ts';
import { isSensitivity, rolesOf, wordEvidence } from './sensitivities.ts';
import { fitsMeaning, unitEvidence, unitFields, unitSource } from './units.ts';

/** A field that could have a meaning, before rivals are compared. */
interface Candidate {
  readonly field: Field;
  readonly evidence: readonly Evidence[];
  /** Told by its words to be another: an old or a proposed one. */
  readonly aside?: boolean;
}

/** What numbers of other meanings can be taken for in a lane, for what is not read. */
const levels: readonly string[] = ['displacement', 'velocity', 'acceleration'];

/** Settles what the fields of a lane mean: one field a meaning, one meaning a field; rivals are left to be asked. */
export function settle(lane: Lane): Settled {
  const units = new Set(unitFields(lane));
  const usable = lane.fields.filter((field) => !units.has(field));
  const taken = new Set<Field>();
  const claims = new Map<MeaningId, Claim>();
  const claim = (id: MeaningId, candidates: readonly Candidate[], more: readonly Evidence[] = []): void => {
    const found = claimOf(
      lane,
      meaning(id),
      candidates.filter(({ field }) => !taken.has(field)),
      more,
    );
    if (!found) return;
    claims.set(id, found);
    taken.add(found.field);
  };

  const setpointCandidates = {
    alert: setpoints(lane, usable, 'alert'),
    danger: setpoints(lane, usable, 'danger'),
  };
  const company = companyOf(usable, setpointCandidates.alert.length + setpointCandidates.danger.length > 0);
  const roles = rolesOf({ ...lane, fields: usable }, company);
  for (const id of ['measured', 'configured', 'asLeftSensitivity', 'referenceSensitivity'] as const) {
    const own = roles.filter((role) => role.meaning === id && role.aside === null);
    const aside = roles.filter(
      (role) =>
        role.aside !== null &&
        !own.some(({ field }) => field.standard.length > 0 && role.aside === 'old' && field.years.length > 0),
    );
    const unsure =
      own.length === 0 && (id === 'measured' || id === 'configured') && wantsRole(id, company)
        ? roles.filter(({ meaning: other, aside: isAside }) => other === null && isAside === null)
        : [];
    const candidates = [
      ...own,
      ...unsure,
      ...(own.length > 0 && id !== 'referenceSensitivity'
        ? aside.filter((role) => sameSide(id, role.field))
        : []),
    ];
    if (own.length > 0 || unsure.length > 0)
      claim(
        id,
        candidates.map(({ field, evidence, aside: isAside }) => ({
          field,
          evidence,
          aside: isAside !== null,
        })),
      );
  }
  const pair = pairOf(usable);
  for (const id of ['alert', 'danger'] as const) claim(id, setpointCandidates[id], pair?.[id] ?? []);
  claim('fullScale', named(usable, meaning('fullScale')));
  const side = sideOf(claims);
  for (const [id, wanted] of meanings) {
    if (claims.has(id) || wanted.matter === 'tag' || special.has(id)) continue;
    claim(
      id,
      named(
        usable.filter((field) => isOfSide(field, id, side)),
        wanted,
      ),
    );
  }
  inOrder(lane, claims);
  const open = usable.filter((field) => !taken.has(field)).flatMap((field) => openField(field, claims) ?? []);
  return { claims, open };
}

/** Which of both tables a lane is alone: what was found of the probes, or what is set in the monitor. */
function sideOf(claims: ReadonlyMap<MeaningId, Claim>): 'channels' | 'settings' | null {
  const set = (['configured', 'alert', 'danger'] as const).some((id) => claims.has(id));
  const found = (['measured', 'asLeftSensitivity', 'referenceSensitivity'] as const).some((id) =>
    claims.has(id),
  );
  if (set === found) return null;
  return set ? 'settings' : 'channels';
}

/** A header that names a column of either table, such as `Zero voltage`, means the one of the table that it stands in. */
function isOfSide(field: Field, id: MeaningId, side: 'channels' | 'settings' | null): boolean {
  const own = field.standard.find((name) => name.id === id);
  const other = field.standard.find((name) => name.id !== id && name.table !== own?.table);
  return side === null || own === undefined || other === undefined || own.table === side;
}

const special: ReadonlySet<MeaningId> = new Set<MeaningId>([
  'measured',
  'configured',
  'asLeftSensitivity',
  'referenceSensitivity',
  'alert',
  'danger',
  'fullScale',
  'kind',
]);

function wantsRole(
  id: MeaningId,
  company: { readonly setpoints: boolean; readonly tests: readonly string[] },
): boolean {
  return id === 'configured' ? company.setpoints : company.tests.length > 0 || !company.setpoints;
}

/** Whether an old or a proposed value is of the side of a meaning: what was set, or what was measured. */
function sameSide(id: MeaningId, field: Field): boolean {
  const [set, test] = [
    field.concepts.has('configured'),
    field.concepts.has('measured') || field.concepts.has('as found'),
  ];
  if (set === test) return true;
  return id === 'configured' ? set : test;
}

function companyOf(fields: readonly Field[], hasSetpoints: boolean): { setpoints: boolean; tests: string[] } {
  const tests = fields.filter((field) => {
    if (isSensitivity(field)) return false;
    const gap =
      field.concepts.has('gap voltage') &&
      (field.units.some(({ stated }) => stated.unit?.dimension === 'voltage') || field.values.greatest < 0);
    return (
      gap ||
      field.concepts.get('date')?.strength === 'strong' ||
      field.concepts.get('person')?.strength === 'strong'
    );
  });
  return { setpoints: hasSetpoints, tests: tests.map(({ text }) => text) };
}

function setpoints(lane: Lane, fields: readonly Field[], id: 'alert' | 'danger'): Candidate[] {
  const wanted = meaning(id);
  const standard = standards(fields, wanted);
  const words = fields.filter(
    (field) =>
      field.standard.length === 0 &&
      !isSensitivity(field) &&
      names(field, wanted) &&
      field.values.numbers + field.values.odd > 0,
  );
  const rest = words.filter((field) => fits(lane, field, wanted));
  const byWord = rest.map((field): Candidate => ({
    field,
    evidence: wordEvidence(field, [id]),
    aside:
      field.concepts.get('proposed')?.strength === 'strong' ||
      field.concepts.get('old')?.strength === 'strong',
  }));
  if (standard.length > 0 || byWord.length > 0) return [...standard, ...byWord];
  const pair = pairOf(fields);
  const own = pair && fields.find((field) => field === pair.fields[id === 'alert' ? 0 : 1]);
  return own ? [{ field: own, evidence: [] }] : [];
}

/** Two columns named by the words of a pair, and by nothing else. */
function pairOf(
  fields: readonly Field[],
): { fields: readonly [Field, Field]; alert: Evidence[]; danger: Evidence[] } | undefined {
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
    const other = fields.find((field) => key(field) === headerKey(high) && field.values.numbers > 0);
    if (!one || !other) continue;
    const evidence: Evidence = { is: 'pair', low, high, sure: surePairs.has(low) };
    return { fields: [one, other], alert: [evidence], danger: [evidence] };
  }
  return undefined;
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

function named(fields: readonly Field[], wanted: Meaning): Candidate[] {
  const standard = standards(fields, wanted);
  if (standard.length > 0) return standard;
  return fields
    .filter(
      (field) =>
        field.standard.length === 0 &&
        names(field, wanted) &&
        holds(field, wanted) &&
        !(wanted.matter !== 'text' && isSensitivity(field)),
    )
    .map((field) => ({ field, evidence: wordEvidence(field, wanted.named.flat()) }));
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
      values.numbers * 2 <= values.filled &&
      units.length === 0 &&
      values.dates === 0 &&
      values.units * 2 < Math.max(1, values.texts)
    );
  const stated = units[0]?.stated;
  if (stated && !fitsMeaning(stated, wanted)) return false;
  return values.numbers > 0 && values.dates === 0;
}

function claimOf(
  lane: Lane,
  wanted: Meaning,
  candidates: readonly Candidate[],
  more: readonly Evidence[],
): Claim | undefined {
  const visible = candidates.filter(({ field }) => !field.place.hidden);
  const shown = visible.length > 0 ? visible : candidates;
  const hidden = visible.length > 0 ? candidates.filter(({ field }) => field.place.hidden) : [];
  const sorted = shown.toSorted(
    (one, other) =>
      Number(one.aside ?? false) - Number(other.aside ?? false) ||
      rank(other) - rank(one) ||
      later(other.field) - later(one.field),
  );
  const [first, ...others] = sorted.length > 1 && wanted.matter === 'text' ? bestText(sorted) : sorted;
  if (!first) return undefined;
  const { field } = first;
  const unit = unitSource(lane, field, wanted);
  const where = (other: Field) => ({
    sheet: lane.block.sheet.name,
    row: other.place.header.at(-1)?.row ?? 0,
    column: other.place.header.at(-1)?.column ?? 0,
  });
  const evidence: Evidence[] = [
    ...first.evidence,
    ...unitEvidence(field, unit, wanted),
    ...sizeEvidence(field, unit.fixed?.unit ? unit.fixed.unit.text : null, wanted),
    ...more,
    ...(field.place.hidden ? [{ is: 'hidden', what: 'column' } as const] : []),
    ...others.map(({ field: other }): Evidence => ({
      is: 'rival',
      header: other.text,
      place: where(other),
      hidden: false,
    })),
    ...hidden.map(({ field: other }): Evidence => ({
      is: 'rival',
      header: other.text,
      place: where(other),
      hidden: true,
    })),
    { is: 'values', records: field.values.records, filled: field.values.filled },
  ];
  return {
    meaning: wanted.id,
    field,
    unit,
    evidence,
    standing: standingOf(wanted.matter, signsOf(evidence)),
    rivals: [...others, ...hidden].map(({ field: other }) => other),
  };
}

/** Of texts only those with as good a word as the best can rival. */
function bestText(sorted: readonly Candidate[]): readonly Candidate[] {
  const best = Math.max(...sorted.map(rank));
  return sorted.filter((candidate) => rank(candidate) === best);
}

function rank({ evidence }: Candidate): number {
  let best = 0;
  for (const one of evidence) {
    if (one.is === 'standard header') best = Math.max(best, one.exact ? 4 : 3);
    else if (one.is === 'word') best = Math.max(best, one.strength === 'strong' ? 2 : 1);
  }
  return best;
}

function later(field: Field): number {
  return Math.max(0, ...field.years);
}

/** Whether the size of numbers is usual for a meaning in a unit. */
function sizeEvidence({ values }: Field, unitText: string | null, wanted: Meaning): Evidence[] {
  const [usual] = wanted.sizes;
  if (!usual || values.numbers === 0) return [];
  const [unit, base] = [unitText === null ? undefined : parseUnit(unitText), parseUnit(usual.unit)];
  if (!unit || !base || unit.dimension !== base.dimension) return [];
  const size = Math.abs(convert(values.median, unit, base));
  return [
    { is: 'size', median: values.median, unit: unitText, fits: size >= usual.from && size <= usual.to },
  ];
}

/** Whether the alert lies below the danger, and the danger below full scale, in every record. */
function inOrder(lane: Lane, claims: Map<MeaningId, Claim>): void {
  const add = (id: MeaningId, evidence: Evidence): void => {
    const there = claims.get(id);
    if (!there) return;
    const all = [...there.evidence, evidence];
    claims.set(id, { ...there, evidence: all, standing: standingOf(meaning(id).matter, signsOf(all)) });
  };
  const [alert, danger, scale] = [claims.get('alert'), claims.get('danger'), claims.get('fullScale')];
  if (alert && danger) {
    const order = orderOf(lane, alert, danger);
    if (order)
      for (const id of ['alert', 'danger'] as const)
        add(id, { is: 'order', below: alert.field.text, above: danger.field.text, ...order });
  }
  const set = claims.get('configured') ?? scale;
  if (set) {
    for (const id of ['alert', 'danger'] as const) {
      const other = claims.get(id === 'alert' ? 'danger' : 'alert');
      if (!other) add(id, { is: 'role', role: 'setpoint', from: 'company', company: [set.field.text] });
    }
  }
  if (scale && danger) {
    const order = orderOf(lane, danger, scale);
    if (order) add('fullScale', { is: 'order', below: danger.field.text, above: scale.field.text, ...order });
  }
}

function openField(field: Field, claims: ReadonlyMap<MeaningId, Claim>): OpenField | undefined {
  const { values, units, concepts } = field;
  if (values.numbers === 0) return undefined;
  const dimension = units[0]?.stated.unit?.dimension ?? [...values.cellUnits.values()][0]?.unit?.dimension;
  if (isSensitivity(field) || dimension?.startsWith('voltage/')) return { field, looksLike: 'sensitivity' };
  if (units[0]?.stated.ofScale === true || (dimension && levels.includes(dimension)))
    return { field, looksLike: 'level' };
  if ((['alert', 'danger', 'full scale'] as const).some((concept) => concepts.has(concept)))
    return { field, looksLike: 'level' };
  if (concepts.has('gap voltage') || (dimension === 'voltage' && !claims.has('gapVoltage')))
    return { field, looksLike: 'gap voltage' };
  return undefined;
}
