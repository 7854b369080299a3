import type { Detection, Unit } from '../../../units/parse.ts';
import type { Place } from '../../model/findings.ts';
import type { MemberOutOfService } from '../../model/report.ts';
import type { MemberReason, ThresholdResult } from '../../model/threshold.ts';
import { type MemberOutPolicy, mixedVote, type LiveVote } from '../../../method/voting/liveVote.ts';
import type { Voting } from '../../../method/voting/voting.ts';
import type { Policy } from '../../model/policy.ts';

/** What a system does with members out of service, as a policy says it. */
export type OutPolicies = Pick<Policy, 'bypassed' | 'faulty' | 'groups'>;

/** A channel as a member of its voting group, whether or not it could be audited. */
export interface Member {
  readonly tag: string;
  /** A group belongs to its machine: the same name on two machines is two groups. */
  readonly machine: string;
  readonly group: string;
  readonly voting: string;
  /** Where its group and its voting stand. */
  readonly places: { readonly group: Place; readonly voting: Place };
  readonly bypass: boolean | null;
  /** Whether the monitor marks it faulty now: its gap voltage lies outside the fault limits. */
  readonly faulty: boolean;
  readonly batch: string;
  /** The part of its uncertainty that the batch shares, expanded, a fraction. */
  readonly sharedUncertainty: number | null;
  readonly limit: number | null;
  readonly unit: Unit | null;
  readonly detection: Detection | null;
  /** As it is now. */
  readonly thresholds: readonly ThresholdResult[];
  /** As it was found, where it was measured again since; else `null`. */
  readonly asFound: readonly ThresholdResult[] | null;
  /** Why nothing of it could be worked out; `null` where it was audited. */
  readonly notAudited: MemberReason | null;
}

/**
 * Members of the same group: its machine and its name tell it from others. One that names no machine belongs to the group of
 * that name where there is just one.
 */
export function membersByGroup(members: readonly Member[]): Member[][] {
  const byName = new Map<string, Map<string, Member[]>>();
  for (const member of members) {
    if (member.group === '') continue;
    const machines = entry(byName, keyOf(member.group), () => new Map<string, Member[]>());
    entry(machines, keyOf(member.machine), (): Member[] => []).push(member);
  }
  return [...byName.values()].flatMap((machines) => {
    const nameless = machines.get('');
    if (!nameless || machines.size !== 2) return [...machines.values()];
    const named = [...machines].flatMap(([machine, all]) => (machine === '' ? [] : all));
    return [[...named, ...nameless]];
  });
}

function keyOf(text: string): string {
  return text.trim().replace(/\s+/gu, ' ').toLowerCase();
}

function entry<K, V>(map: Map<K, V>, key: K, empty: () => V): V {
  const there = map.get(key);
  if (there !== undefined) return there;
  const made = empty();
  map.set(key, made);
  return made;
}

/** Members of one group that are out of service, by what the site or the group says of them. */
export function membersOut(members: readonly Member[], policy: OutPolicies): MemberOutOfService[] {
  return members.flatMap((member): MemberOutOfService[] => {
    const because = member.bypass === true ? 'bypassed' : member.faulty ? 'faulty' : null;
    if (because === null) return [];
    const { tag } = member;
    const [first = member] = members;
    const { vote, saidBy } = outPolicyOf(first, because, policy);
    return [{ tag, because, policy: vote ?? 'no-trip', saidBy }];
  });
}

/** What the policy says of the vote of a member that is out: of its group itself, else of the site; `null`: nothing. */
export function outPolicyOf(
  of: Pick<Member, 'machine' | 'group'>,
  because: MemberOutOfService['because'],
  policy: OutPolicies,
): { readonly vote: MemberOutPolicy | null; readonly saidBy: MemberOutOfService['saidBy'] } {
  const ofGroup = entryOf(of, policy)?.[because] ?? null;
  const vote = ofGroup ?? policy[because];
  return { vote, saidBy: ofGroup !== null ? 'group' : vote !== null ? 'site' : null };
}

/** What the policy says of this group itself: by machine and name, else by its name alone. */
function entryOf(
  { machine: own, group: name }: Pick<Member, 'machine' | 'group'>,
  { groups }: OutPolicies,
): Policy['groups'][number] | undefined {
  const of = groups.filter(({ group }) => same(group, name));
  return (
    of.find(({ machine }) => machine !== '' && same(machine, own)) ?? of.find(({ machine }) => machine === '')
  );
}

function same(one: string, other: string): boolean {
  const key = (text: string): string => text.trim().replace(/\s+/gu, ' ').toLowerCase();
  return key(one) === key(other);
}

/** The vote that is left, of as many members as are listed or the voting takes, whichever is more. */
export function voteLeft({ m, n }: Voting, listed: number, out: readonly MemberOutOfService[]): LiveVote {
  const count = (policy: MemberOutPolicy): number => out.filter((one) => one.policy === policy).length;
  const size = Math.max(n, listed);
  const missing = size - listed;
  const left = { 'no-trip': count('no-trip') + missing, trip: count('trip'), reduce: count('reduce') };
  return mixedVote({ m, n: size }, left) ?? 'cannot trip';
}
