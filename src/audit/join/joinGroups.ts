import { evaluateGroups } from '../groups/groups.ts';
import type { Member } from '../groups/members.ts';
import { peerSlips } from '../groups/peers.ts';
import type { Policy } from '../policy/policy.ts';
import type { Finding, GroupResult, Problem } from '../report/types.ts';
import { placed } from '../rows/complaint.ts';
import type { FoundTable } from '../tables/found.ts';
import type { AuditedChannel } from './context.ts';

export interface JoinedGroups {
  readonly groups: readonly GroupResult[];
  /** What there is to say about members that are no channels of the list. */
  readonly problems: readonly Problem[];
}

/**
 * Works out the voting groups of all channels, and adds what there is to say about a group to the findings of each of
 * its members. `lone` are members of which only the settings are known.
 */
export function joinGroups(
  audited: readonly AuditedChannel[],
  lone: readonly Member[],
  settings: FoundTable,
  policy: Policy,
): JoinedGroups {
  const findingsOf = new Map<Member, Finding[]>();
  for (const { member, result } of audited) if (member) findingsOf.set(member, result.findings);
  const { groups, complaints } = evaluateGroups([...findingsOf.keys(), ...lone], policy.tolerance);
  const problems: Problem[] = [];
  for (const { member, column, rule, severity, message } of [...complaints, ...peerSlips(groups)]) {
    const finding = placed(settings, member.row, { rule, severity, message, column });
    (findingsOf.get(member) ?? problems).push(finding);
  }
  for (const { result, statements, members } of groups) {
    for (const statement of statements) {
      for (const [index, member] of members.entries()) {
        const finding = placed(settings, member.row, { ...statement, column: 'voting' });
        if (index === 0) result.findings = [...result.findings, finding];
        findingsOf.get(member)?.push(finding);
      }
    }
  }
  return { groups: groups.map((group) => group.result), problems };
}
