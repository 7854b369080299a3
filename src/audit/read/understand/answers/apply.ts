import type { Field } from '../fields/field.ts';
import { meaning, type MeaningId } from '../meaning.ts';
import type { Evidence } from '../standing/evidence.ts';
import type { Claim, Settled } from '../tables/claim.ts';
import type { Lane } from '../tables/lane.ts';
import { unitEvidence, unitSource } from '../tables/units.ts';
import type { Answers } from './answers.ts';

const answered: Evidence = { is: 'answer', of: 'person' };

/** What was settled of a lane with what a person said put in: an answer is certain, and takes its field from all others. */
export function withAnswers(lane: Lane, settled: Settled, said: Answers): Settled {
  const answer = said.of(lane);
  if (!answer) return settled;
  const claims = new Map<MeaningId, Claim>(settled.claims);
  const given = new Set<Field>([...answer.columns.values()].flatMap((field) => field ?? []));
  for (const [id, claim] of settled.claims)
    if (given.has(claim.field) || answer.notQuantities.has(claim.field)) claims.delete(id);
  for (const [id, field] of answer.columns) {
    claims.delete(id);
    if (!field) continue;
    const unit = unitSource(lane, field, meaning(id));
    const evidence = [
      answered,
      ...unitEvidence(field, unit, meaning(id)).filter((one) => one.is === 'unit' && one.fits),
    ];
    claims.set(id, { meaning: id, field, unit, evidence, standing: 'certain', rivals: [] });
  }
  for (const [id, stated] of answer.units) {
    const claim = claims.get(id);
    if (claim)
      claims.set(id, {
        ...claim,
        unit: { fixed: stated, scope: 'answer', place: null, beside: [], strange: null },
        evidence: [
          ...claim.evidence,
          { is: 'unit', unit: stated.text, scope: 'answer', place: null, fits: true },
        ],
      });
  }
  const { series } = answer;
  const [from, to]: readonly [MeaningId, MeaningId] =
    series === 'as left' ? ['measured', 'asLeftSensitivity'] : ['asLeftSensitivity', 'measured'];
  const moved = series === null ? undefined : claims.get(from);
  if (moved && !claims.has(to)) {
    claims.delete(from);
    claims.set(to, { ...moved, meaning: to, evidence: [answered, ...moved.evidence], standing: 'certain' });
  }
  const taken = new Set([...claims.values()].map(({ field }) => field));
  return {
    claims,
    open: settled.open.filter(({ field }) => !taken.has(field) && !answer.notQuantities.has(field)),
  };
}
