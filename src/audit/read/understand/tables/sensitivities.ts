import { seriesOf, type LaneSeries } from './series.ts';
import type { Field } from '../fields/field.ts';
import type { MeaningId } from '../meaning.ts';
import type { Evidence } from '../standing/evidence.ts';
import type { StandardName } from '../vocabulary/headerText.ts';
import type { Concept } from '../vocabulary/wordList.ts';
import { isSensitivity, sensitivityIds } from './isSensitivity.ts';
import type { Lane } from './lane.ts';

/** A field of sensitivities with the role that it has: which meaning, by what. */
export interface Role {
  readonly field: Field;
  /** `null`: it is a sensitivity, and nothing tells which. */
  readonly meaning: MeaningId | null;
  readonly evidence: readonly Evidence[];
  /** An earlier value or one only proposed: it rivals, and is never taken by itself. */
  readonly aside: 'old' | 'proposed' | null;
}

/** Gives every sensitivity of a lane its role: by its words, by the series of its list, or by the company that it keeps. */
export function rolesOf(
  lane: Lane,
  company: { readonly setpoints: boolean; readonly tests: readonly string[] },
): Role[] {
  const series = seriesOf(lane);
  const fields = lane.fields.filter(isSensitivity);
  const worded = fields.map((field) => byWords(field, series, company));
  const shown = worded.filter(({ field }) => !field.place.hidden);
  const seen = shown.length > 0 ? shown : worded;
  const open = seen.filter((role) => role.meaning === null && role.aside === null);
  const sure = (id: MeaningId) =>
    worded.some(
      ({ meaning: other, evidence }) =>
        other === id &&
        evidence.some((one) => one.is === 'standard header' || (one.is === 'role' && one.from === 'word')),
    );
  return worded.map((role) => {
    const counterpart =
      role.meaning === 'measured' ? 'configured' : role.meaning === 'configured' ? 'measured' : null;
    if (counterpart === 'measured' && !company.setpoints) return role;
    const isWeak = role.evidence.some((one) => one.is === 'role' && one.from === 'weak word');
    if (
      counterpart &&
      isWeak &&
      sure(counterpart) &&
      worded.filter((other) => other.meaning === role.meaning).length === 1
    )
      return {
        ...role,
        evidence: [
          ...role.evidence,
          { is: 'role', role: role.meaning ?? '', from: 'the other column', company: [] },
        ],
      };
    if (role.meaning !== null || role.aside !== null || conflicts(role.field)) return role;
    return byCompany(role, seen, open.length, series, company) ?? role;
  });
}

function strengthOf(field: Field, ...concepts: readonly Concept[]): 0 | 1 | 2 {
  let strength: 0 | 1 | 2 = 0;
  for (const concept of concepts) {
    const fact = field.concepts.get(concept);
    if (fact) strength = fact.strength === 'strong' ? 2 : (Math.max(strength, 1) as 1 | 2);
    if (strength === 2) return 2;
  }
  return strength;
}

/** Whether a header says both that it is measured and that it is set. */
function conflicts(field: Field): boolean {
  const set = strengthOf(field, 'configured');
  return set > 0 && set === strengthOf(field, 'measured', 'as found', 'as left');
}

/**
 * Whether another way to write a standard header, without a word for measured or set, stands in the company of the other
 * one: `Scale factor` beside gap voltages and test days.
 */
function contradictsCompany(
  field: Field,
  { id, exact }: StandardName,
  { setpoints, tests }: { readonly setpoints: boolean; readonly tests: readonly string[] },
): boolean {
  if (exact || strengthOf(field, 'configured', 'measured', 'as found', 'as left', 'reference') > 0)
    return false;
  if (setpoints === tests.length > 0) return false;
  return setpoints ? id === 'measured' : id === 'configured';
}

function byWords(
  field: Field,
  series: LaneSeries | undefined,
  company: { readonly setpoints: boolean; readonly tests: readonly string[] },
): Role {
  const standard = field.standard.find(({ id }) => sensitivityIds.has(id));
  const aside =
    strengthOf(field, 'old') === 2 ? 'old' : strengthOf(field, 'proposed') === 2 ? 'proposed' : null;
  if (standard && !contradictsCompany(field, standard, company)) {
    const id = standard.id as MeaningId;
    const left = id === 'measured' && series?.series === 'as left' && strengthOf(field, 'as found') === 0;
    const said: Evidence[] = [{ is: 'standard header', header: field.text, exact: standard.exact }];
    if (left && series.strength === 'strong')
      return { field, meaning: 'asLeftSensitivity', aside, evidence: [...said, { is: 'series', ...series }] };
    return {
      field,
      meaning: id,
      aside,
      evidence: series && id === 'measured' ? [...said, { is: 'series', ...series }] : said,
    };
  }
  if (aside) return { field, meaning: null, aside, evidence: wordEvidence(field, ['old', 'proposed']) };
  if (strengthOf(field, 'reference') > strengthOf(field, 'measured', 'configured', 'as found', 'as left')) {
    return {
      field,
      meaning: 'referenceSensitivity',
      aside,
      evidence: [
        ...wordEvidence(field, ['sensitivity', 'reference']),
        roleBy(field, ['reference'], 'reference', company),
      ],
    };
  }
  const [set, found, left, test] = [
    strengthOf(field, 'configured'),
    strengthOf(field, 'as found'),
    strengthOf(field, 'as left'),
    strengthOf(field, 'measured'),
  ];
  const sure = Math.max(found, left, test);
  if (set > sure)
    return {
      field,
      meaning: 'configured',
      aside,
      evidence: [
        ...wordEvidence(field, ['sensitivity', 'configured']),
        roleBy(field, ['configured'], 'configured', company),
      ],
    };
  if (sure === 0 || conflicts(field) || (left > 0 && left === found))
    return { field, meaning: null, aside, evidence: wordEvidence(field, ['sensitivity']) };
  const words: Evidence[] = wordEvidence(field, ['sensitivity', 'measured', 'as found', 'as left']);
  if (left > found) {
    return {
      field,
      meaning: 'asLeftSensitivity',
      aside,
      evidence: [...words, roleBy(field, ['as left'], 'as left', company)],
    };
  }
  if (found === 0 && series?.series === 'as left' && series.strength === 'strong') {
    return { field, meaning: 'asLeftSensitivity', aside, evidence: [...words, { is: 'series', ...series }] };
  }
  const more: Evidence[] = series ? [{ is: 'series', ...series }] : [];
  return {
    field,
    meaning: 'measured',
    aside,
    evidence: [
      ...words,
      roleBy(field, found > 0 ? ['as found', 'measured'] : ['measured'], 'measured', company),
      ...more,
    ],
  };
}

/** Evidence for a role by words of the header, with what stands beside it that goes with the role. */
function roleBy(
  field: Field,
  concepts: readonly Concept[],
  role: string,
  company: { readonly setpoints: boolean; readonly tests: readonly string[] },
): Evidence {
  const facts = concepts.flatMap((concept) => field.concepts.get(concept) ?? []);
  const from = facts.every(({ covers }) => covers === 'assumed')
    ? 'assumed group'
    : facts.some(({ strength }) => strength === 'strong')
      ? 'word'
      : 'weak word';
  const beside =
    role === 'configured'
      ? company.setpoints
        ? ['setpoints']
        : []
      : role === 'reference'
        ? []
        : company.tests;
  return { is: 'role', role, from, company: beside };
}

/** The words of a header for some concepts. */
export function wordEvidence(field: Field, concepts: readonly Concept[]): Evidence[] {
  return concepts.flatMap((concept): Evidence[] => {
    const fact = field.concepts.get(concept);
    const role = !['sensitivity', 'alert', 'danger'].includes(concept) && concepts.includes('sensitivity');
    return fact && !role
      ? [{ is: 'word', concept, strength: fact.strength, text: fact.text, covers: fact.covers }]
      : [];
  });
}

function byCompany(
  role: Role,
  all: readonly Role[],
  open: number,
  series: LaneSeries | undefined,
  { setpoints, tests }: { readonly setpoints: boolean; readonly tests: readonly string[] },
): Role | undefined {
  const has = (id: MeaningId) => all.some((other) => other.meaning === id);
  const to = (id: MeaningId, evidence: Evidence): Role => ({
    ...role,
    meaning: id,
    evidence: [...role.evidence, evidence],
  });
  if (series?.strength === 'strong' && !setpoints && open === 1) {
    const id = series.series === 'as left' ? 'asLeftSensitivity' : 'measured';
    if (!has(id)) return to(id, { is: 'series', ...series });
  }
  if (open !== 1) return undefined;
  if (setpoints && tests.length === 0 && !has('configured'))
    return to('configured', { is: 'role', role: 'configured', from: 'company', company: ['setpoints'] });
  if (!setpoints && tests.length > 0 && !has('measured'))
    return to('measured', { is: 'role', role: 'measured', from: 'company', company: tests });
  if (has('configured') && !has('measured'))
    return to('measured', { is: 'role', role: 'measured', from: 'the other column', company: tests });
  if (has('measured') && !has('configured') && setpoints)
    return to('configured', {
      is: 'role',
      role: 'configured',
      from: 'the other column',
      company: ['setpoints'],
    });
  return undefined;
}
