import type { Field, UnitFact, UnitScope } from '../fields/field.ts';
import type { Meaning, MeaningId } from '../meaning.ts';
import { readHeader } from '../vocabulary/headerText.ts';
import type { Place } from '../blocks/block.ts';
import type { Evidence } from '../standing/evidence.ts';
import type { StatedUnit } from '../vocabulary/statedUnit.ts';
import { looksLikeUnit } from '../../tables/header.ts';
import { tokensOf, withoutTrailing } from '../vocabulary/lexicon.ts';
import type { Concept } from '../vocabulary/wordList.ts';
import type { Lane } from './lane.ts';

/** Where the unit of a field's numbers comes from, beside what single cells say for themselves. */
export interface UnitSource {
  /** Of all numbers of the field; `null` where none is stated. */
  readonly fixed: StatedUnit | null;
  readonly scope: UnitScope | null;
  readonly place: Place | null;
  /** A text around the table names the header with it. */
  readonly named?: boolean;
  /** Fields whose cells state the units of each record, nearest first. */
  readonly beside: readonly Field[];
  /** The header states something as a unit that is none. */
  readonly strange: string | null;
  /** A text around the list says zero to peak, and the unit nothing of it. */
  readonly doubt?: string;
}

/** Whether a unit can be one of a meaning. */
export function fitsMeaning(stated: StatedUnit, { dimensions, matter }: Meaning): boolean {
  if (stated.ofScale) return matter === 'setpoint';
  return dimensions.includes(stated.unit.dimension);
}

/** The fields of a lane whose cells are units. */
export function unitFields(lane: Lane): readonly Field[] {
  return lane.fields.filter(({ values, concepts, units, standard }) => {
    if (values.numbers > 0 || units.length > 0 || standard.length > 0) return false;
    if (concepts.has('unit')) return values.units > 0 || concepts.get('unit')?.strength === 'strong';
    return concepts.size === 0 && values.units > 0 && values.units * 2 >= values.texts;
  });
}

/** Which meanings a column of units names: those of the concepts in its header, or all where it names none. */
function speaksFor(unit: Field, wanted: Meaning): boolean {
  const exact = standardOf(unit);
  if (exact.length > 0) return exact.includes(wanted.id);
  const named = namesOf(unit);
  if (named.length === 0) return true;
  if (sides.some(([concept, ids]) => named.includes(concept) && !ids.includes(wanted.id))) return false;
  if (named.includes('setpoint') && wanted.matter === 'setpoint') return true;
  return wanted.named.some((list) => list.some((concept) => named.includes(concept)));
}

/** Words by which a column of units speaks for some meanings alone. */
const sides: readonly (readonly [Concept, readonly MeaningId[]])[] = [
  ['as left', ['asLeftSensitivity', 'asLeftGapVoltage', 'asLeftUncertainty']],
  ['measured', ['measured', 'zeroMeasured', 'gapVoltage']],
  ['configured', ['configured', 'zeroConfigured']],
];
const unitEnding =
  /\b(?:engineering units?|units?|uom|eu|einheit(?:en)?|unidad(?:es)?|unit[ée]s?|unidades?|unit[àa])\.?\s*$/iu;

/** The standard header whose unit a column names, as `Limit unit` does. */
function standardOf(unit: Field): string[] {
  const leaf = unit.parts.findLast(({ name }) => name !== '')?.name ?? '';
  const ending = leaf.search(unitEnding);
  const stem = withoutTrailing(leaf.slice(0, Math.max(0, ending)), /[\s_-]/u);
  return stem === '' ? [] : readHeader(stem).standard.map(({ id }) => id);
}

/** The quantities that a column of units names: a group above it names none, it only tells sides apart. */
function namesOf(unit: Field): Concept[] {
  const own = unit.parts.findLast(({ name }) => name !== '');
  return [...unit.concepts.keys()].filter(
    (concept) => concept !== 'unit' && concept !== 'machine' && own?.concepts.has(concept) === true,
  );
}

/** The unit of a field as it would have a meaning. */
export function unitSource(lane: Lane, field: Field, wanted: Meaning): UnitSource {
  const source = statedSource(lane, field, wanted);
  const [said] = lane.zeroToPeak;
  const unit = source.fixed?.unit;
  return said && isLevel(wanted) && unit?.dimension === 'displacement' && !unit.detection
    ? { ...source, doubt: said.text }
    : source;
}

/** Whether a meaning is a vibration or what is compared with one. */
function isLevel({ id, matter }: Meaning): boolean {
  return matter === 'setpoint' || matter === 'scale' || id === 'limit' || id === 'reading';
}

function statedSource(lane: Lane, field: Field, wanted: Meaning): UnitSource {
  const own = field.units.find(({ scope }) => scope !== 'format');
  const fitting = field.units.find((fact) => fitsMeaning(fact.stated, wanted));
  const beside = besideFor(lane, field, wanted);
  const strange = own
    ? null
    : (field.remarks.find((remark) => looksLikeUnit(remark) || remark.startsWith('%')) ?? null);
  const stated = (fact: UnitFact | undefined, scope?: UnitScope): UnitSource => ({
    fixed: fact?.stated ?? null,
    scope: scope ?? fact?.scope ?? null,
    place: fact?.place ?? null,
    ...(fact?.named ? { named: true } : {}),
    beside,
    strange,
  });
  if (own) return stated(fitting ?? own);
  if (strange !== null || beside.length > 0) return stated(fitting);
  if (fitting) return stated(fitting);
  const noted = notedFor(lane, field, wanted);
  return noted ?? stated(undefined);
}

function besideFor(lane: Lane, field: Field, wanted: Meaning): readonly Field[] {
  const all = unitFields(lane).filter((unit) => unit !== field);
  const naming = all.filter(
    (unit) => (namesOf(unit).length > 0 || standardOf(unit).length > 0) && speaksFor(unit, wanted),
  );
  const bare = all.filter((unit) => namesOf(unit).length === 0 && standardOf(unit).length === 0);
  const nearest = bare.filter((unit) => unit.place.at === field.place.at + 1);
  const sources = naming.length > 0 ? naming : wanted.usualUnit !== null ? nearest : bare;
  const right = sources.find((unit) => unit.place.at === field.place.at + 1);
  return right ? [right, ...sources.filter((unit) => unit !== right)] : sources;
}

const groupOf: Readonly<Partial<Record<Meaning['matter'], readonly Concept[]>>> = {
  sensitivity: ['sensitivity'],
  setpoint: ['alert', 'danger', 'setpoint'],
  scale: ['full scale', 'setpoint', 'alert', 'danger'],
};

/** Quantities whose unit says nothing of a meaning: the unit of a full scale may be another than that of setpoints in per cent. */
function foreign({ matter }: Meaning): readonly Concept[] {
  return matter === 'setpoint' ? ['gap voltage', 'full scale'] : ['gap voltage'];
}

/** What tells two quantities of one kind apart in a text that states their units. */
const qualifiers: readonly Concept[] = ['measured', 'configured', 'as found', 'as left'];

/** The unit that a text states for a field: by its header, by the name of its meaning, or as the only one of its kind. */
function notedFor(lane: Lane, field: Field, wanted: Meaning): UnitSource | undefined {
  const names = groupOf[wanted.matter] ?? wanted.named.flat();
  const headers = new Set(field.parts.map(({ name }) => tokensOf(name).join(' ')));
  for (const scope of ['title', 'note', 'legend'] as const) {
    const here = lane.noted
      .filter((noted) => noted.scope === scope && fitsMeaning(noted.unit.stated, wanted))
      .map(({ unit }) => unit);
    const found =
      [
        here.filter((unit) => unit.names.some((name) => headers.has(name))),
        here.filter(
          ({ of }) =>
            of.some((concept) => names.includes(concept)) &&
            qualifiers.some((concept) => of.includes(concept) && field.concepts.has(concept)),
        ),
        here.filter(({ of }) => of.some((concept) => names.includes(concept))),
        here.filter(({ of }) =>
          of.every((concept) => !names.includes(concept) && !foreign(wanted).includes(concept)),
        ),
      ].find((units) => units.length > 0) ?? [];
    const [first] = found;
    if (!first) continue;
    const units = new Set(found.map(({ stated }) => stated.unit?.text ?? '%'));
    if (units.size > 1) return undefined;
    const detected = found.find(({ stated }) => stated.unit?.detection) ?? first;
    return { fixed: detected.stated, scope, place: detected.place, beside: [], strange: null };
  }
  return undefined;
}

/** What the unit of a field says for a meaning. */
export function unitEvidence(field: Field, source: UnitSource, wanted: Meaning): Evidence[] {
  if (wanted.dimensions.length === 0) return [];
  if (source.fixed && source.scope) {
    return [
      {
        is: 'unit',
        unit: source.fixed.text,
        scope: source.scope,
        place: source.place,
        fits: fitsMeaning(source.fixed, wanted),
        ...(source.named ? { named: true } : {}),
      },
    ];
  }
  const [beside] = source.beside;
  if (beside && beside.values.units > 0) {
    const unit = beside.values.samples[0]?.text ?? '';
    return [
      { is: 'unit', unit, scope: 'beside', place: beside.values.samples[0]?.place ?? null, fits: true },
    ];
  }
  const cells = [...field.values.cellUnits.values()];
  if (cells.length > 0 && cells.every((unit) => fitsMeaning(unit, wanted)) && cells[0]) {
    return [
      {
        is: 'unit',
        unit: cells[0].text,
        scope: 'cell',
        place: field.values.samples[0]?.place ?? null,
        fits: true,
      },
    ];
  }
  return [];
}
