import { claimOf } from './claimOf.ts';
import { named, pairOf, setpoints, type Candidate } from './candidates.ts';
import type { Field } from '../fields/field.ts';
import { meaning, meanings, type MeaningId } from '../meaning.ts';
import type { Evidence } from '../standing/evidence.ts';
import { signsOf, standingOf } from '../standing/certainties.ts';
import type { Claim, OpenField, Settled } from './claim.ts';
import type { Lane } from './lane.ts';
import { orderOf } from './order.ts';
import { isSensitivity } from './isSensitivity.ts';
import { rolesOf } from './sensitivities.ts';
import { unitFields } from './units.ts';

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
