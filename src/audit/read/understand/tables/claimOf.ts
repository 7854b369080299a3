import type { Candidate } from './candidates.ts';
import { convert } from '../../../../units/unit.ts';
import { headerKey } from '../../tables/header.ts';
import { parseUnit } from '../../../../units/parse.ts';
import type { Field } from '../fields/field.ts';
import { type Meaning } from '../meaning.ts';
import type { Evidence } from '../standing/evidence.ts';
import { signsOf, standingOf } from '../standing/certainties.ts';
import type { Claim } from './claim.ts';
import type { Lane } from './lane.ts';
import { unitEvidence, unitSource } from './units.ts';

export function claimOf(
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
      later(other.field) - later(one.field) ||
      Number(goesOn(one.field, other.field)) - Number(goesOn(other.field, one.field)),
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
    ...(first.aside === true ? saidAside(field) : []),
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

/** The words by which the only field of a meaning is an old or a proposed one. */
function saidAside({ concepts }: Field): Evidence[] {
  return (['old', 'proposed'] as const).flatMap((as): Evidence[] => {
    const fact = concepts.get(as);
    return fact?.strength === 'strong' ? [{ is: 'aside', as, text: fact.text }] : [];
  });
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

/** Whether a header is another with more behind it: `Sensitivity (2)` beside `Sensitivity`. */
function goesOn(one: Field, other: Field): boolean {
  const [longer, shorter] = [nameOf(one), nameOf(other)];
  return longer.length > shorter.length && longer.startsWith(shorter);
}

function nameOf({ parts }: Field): string {
  return parts.map(({ name, remarks }) => [headerKey(name), ...remarks].join(' ')).join(' ');
}

function later(field: Field): number {
  return Math.max(0, ...field.years);
}

/** Whether the size of numbers is usual for a meaning in a unit. */
function sizeEvidence({ values }: Field, unitText: string | null, wanted: Meaning): Evidence[] {
  const [usual] = wanted.sizes;
  if (!usual || values.numbers === 0) return [];
  const text = unitText ?? (values.cellUnits.size === 0 ? wanted.usualUnit : null);
  const [unit, base] = [text === null ? undefined : parseUnit(text), parseUnit(usual.unit)];
  if (!unit || !base || unit.dimension !== base.dimension) return [];
  const size = Math.abs(convert(values.median, unit, base));
  return [{ is: 'size', median: values.median, unit: text, fits: size >= usual.from && size <= usual.to }];
}
