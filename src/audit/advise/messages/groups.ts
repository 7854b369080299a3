import type { FactOf } from '../../model/findings.ts';
import type { GroupRules } from '../../model/rules/groupRules.ts';
import { timesAtStartUp } from '../../model/threshold.ts';
import { amount } from '../../model/wording.ts';

type Sentences = { readonly [K in keyof GroupRules]: (fact: FactOf<K>) => string };

/** What is said of voting groups. */
export const groupMessages: Sentences = {
  'voting-not-understood': ({ values: { voting } }) =>
    `The voting '${voting.slice(0, 40)}' is not understood; write it like 1oo2 or 2oo3.`,
  'voting-missing': ({ values: { group } }) =>
    `The voting of group '${group}' is missing, so when the group acts is not known; enter it like 1oo2.`,
  'voting-contradicts': ({ values: { group, votings, used } }) =>
    `The members of group '${group}' name different votings (${votings.join(', ')}); ${used} was used, which acts last. Correct them.`,
  'group-missing': ({ values: { voting } }) =>
    `The voting is ${voting} but no voting group is named, so its other members are not known; enter the group.`,
  'group-size-differs': ({ values: { group, voting, needed, listed } }) =>
    `Group '${group}' votes ${voting} but ${listed} of the channels listed belong to it, not ${needed}. Missing members were not counted. Check the group.`,
  'group-cannot-trip': ({ values }) => cannot('trip', values),
  'group-cannot-act': ({ values }) => cannot('act', values),
  'group-tripped': ({ values: { group, voting, threshold, multiplier, out } }) =>
    `Group '${group}' (${voting}) has tripped on ${threshold}${timesAtStartUp(multiplier)} already, or would at once: ${castBy(out)}. Check the policy of members out of service.`,
  'group-beyond-limit': ({ values }) =>
    `${where(values)}, beyond its limit of ${amount(values.limit, values.unit)}; ${by(values)}.`,
  'group-late': ({ values }) =>
    `${where(values)} instead of ${amount(values.intended, values.unit)}; ${by(values)}.`,
};

function cannot(
  what: string,
  { group, voting, threshold, multiplier, idle }: GroupRules['group-cannot-act'],
): string {
  const why = idle.map((member) => `${member.tag} (${member.why ?? 'cannot act'})`).join(', ');
  return `Group '${group}' (${voting}) cannot ${what} on ${threshold}${timesAtStartUp(multiplier)}: these members can't act: ${why}.`;
}

/** Whose votes are cast though they are out: `the votes of A (bypassed), B (faulty) count`. */
function castBy(out: GroupRules['group-tripped']['out']): string {
  const cast = out.filter(({ policy }) => policy === 'trip').map(({ tag, because }) => `${tag} (${because})`);
  return `the votes of ${cast.join(', ')} count as cast`;
}

type Acts = GroupRules['group-beyond-limit' | 'group-late'];

function where({ group, voting, threshold, multiplier, effective, unit }: Acts): string {
  return `Group '${group}' (${voting}) acts on ${threshold}${timesAtStartUp(multiplier)} at ${amount(effective, unit)}`;
}

function by({ decidedBy }: Acts): string {
  return `decided by ${decidedBy.join(', ')}`;
}
