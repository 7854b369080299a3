import { type OutPolicy, mixedVote, type LiveVote } from '../../../method/voting/liveVote.ts';
import type { Voting } from '../../../method/voting/voting.ts';
import type { Policy } from '../../model/policy.ts';
import type { MemberOut } from '../../model/report.ts';
import type { Member } from './members.ts';

/** What a system does with members out of service, as a policy says it. */
export type OutPolicies = Pick<Policy, 'bypassed' | 'faulty' | 'groups'>;

/** Members of one group that are out of service, by what the site or the group says of them. */
export function membersOut(members: readonly Member[], policy: OutPolicies): MemberOut[] {
  return members.flatMap((member): MemberOut[] => {
    const because = member.bypass === true ? 'bypassed' : member.faulty ? 'faulty' : null;
    if (because === null) return [];
    const { tag } = member;
    const ofGroup = entryOf(members, policy)?.[because] ?? null;
    const said = ofGroup ?? policy[because];
    const saidBy = ofGroup !== null ? 'group' : said !== null ? 'site' : null;
    return [{ tag, because, policy: said ?? 'no-trip', saidBy }];
  });
}

/** What the policy says of this group itself: by machine and name, else by its name alone. */
function entryOf(members: readonly Member[], { groups }: OutPolicies): Policy['groups'][number] | undefined {
  const [first] = members;
  const of = groups.filter(({ group }) => same(group, first?.group ?? ''));
  return (
    of.find(({ machine }) => machine !== '' && same(machine, first?.machine ?? '')) ??
    of.find(({ machine }) => machine === '')
  );
}

function same(one: string, other: string): boolean {
  const key = (text: string): string => text.trim().replace(/\s+/gu, ' ').toLowerCase();
  return key(one) === key(other);
}

/** The vote that is left, of as many members as are listed or the voting takes, whichever is more. */
export function voteLeft({ m, n }: Voting, listed: number, out: readonly MemberOut[]): LiveVote {
  const count = (policy: OutPolicy): number => out.filter((one) => one.policy === policy).length;
  const size = Math.max(n, listed);
  const missing = size - listed;
  const left = { 'no-trip': count('no-trip') + missing, trip: count('trip'), reduce: count('reduce') };
  return mixedVote({ m, n: size }, left) ?? 'cannot trip';
}
