import { evaluateGroups } from '../groups/groups.ts';
import type { Member } from '../groups/members.ts';
import { peerSlips } from '../groups/peers.ts';
import type { Policy } from '../policy/policy.ts';
import type { Finding, GroupResult } from '../report/types.ts';
import { placed } from '../rows/complaint.ts';
import type { FoundTable } from '../tables/found.ts';
import type { AuditedChannel } from './context.ts';

/**
 * Works out the voting groups of all channels, and adds what there is to say about a group to the findings of each of
 * its members. `lone` are members of which only the settings are known.
 */
export function joinGroups(
  audited: readonly AuditedChannel[],
  lone: readonly Member[],
  settings: FoundTable,
  policy: Policy,
): GroupResult[] {
  const owners = new Map<Member, AuditedChannel>();
  for (const channel of audited) {
    if (channel.member) owners.set(channel.member, channel);
  }
  const { groups, complaints } = evaluateGroups([...owners.keys(), ...lone], policy.tolerance);
  const say = (
    member: Member,
    statement: Omit<Finding, 'sheet' | 'row' | 'column'>,
    column: string,
  ): Finding | undefined => {
    const owner = owners.get(member);
    const row = owner?.result.source.settings?.row;
    if (!owner || row === undefined) return undefined;
    const finding = placed(settings, row, { ...statement, column });
    owner.result.findings.push(finding);
    return finding;
  };
  for (const { member, column, rule, severity, message } of [...complaints, ...peerSlips(groups)]) {
    say(member, { rule, severity, message }, column);
  }
  return groups.map(({ result, statements, members }): GroupResult => {
    const findings = statements.flatMap((statement) => {
      const said = members.map((member) => say(member, statement, 'voting'));
      return said.find((finding) => finding !== undefined) ?? [];
    });
    return { ...result, findings };
  });
}
