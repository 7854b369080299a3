import type { Finding, PlacedFact } from '../../model/findings.ts';
import { evaluateGroups, type EvaluatedGroup, type GroupComplaint } from '../groups/groups.ts';
import type { Member } from '../groups/members.ts';
import { peerSlips } from '../groups/peers.ts';
import type { Policy } from '../../model/policy.ts';
import type { GroupResult } from '../../model/report.ts';
import { placed } from '../../read/rows/complaint.ts';
import type { FoundTable } from '../../read/tables/found.ts';
import type { AuditedChannel } from './context.ts';

export interface JoinedGroups {
  readonly groups: readonly GroupResult[];
  /** What there is to say about members that are no channels of the list. */
  readonly problems: readonly (PlacedFact | Finding)[];
}

/** Members between two pauses; a group is never torn apart. */
const stride = 250;

/**
 * Works out the voting groups of all channels, and adds what there is to say about a group to the findings of each of
 * its members. `lone` are members of which only the settings are known. Yields the part done, from 0 to 1.
 */
export function* joinGroups(
  audited: readonly AuditedChannel[],
  lone: readonly Member[],
  settings: FoundTable,
  policy: Policy,
): Generator<number, JoinedGroups, void> {
  const findingsOf = new Map<Member, (PlacedFact | Finding)[]>();
  for (const { member, result } of audited) if (member) findingsOf.set(member, result.findings);
  const members = [...findingsOf.keys(), ...lone];
  const groups: EvaluatedGroup[] = [];
  const complaints: GroupComplaint[] = [];
  const slips: GroupComplaint[] = [];
  let done = 0;
  for (const some of wholeGroups(members)) {
    const found = evaluateGroups(some, policy.tolerance);
    for (const group of found.groups) groups.push(group);
    for (const complaint of found.complaints) complaints.push(complaint);
    for (const slip of peerSlips(found.groups)) slips.push(slip);
    done += some.length;
    yield (0.8 * done) / members.length;
  }

  const problems: (PlacedFact | Finding)[] = [];
  for (const one of [...complaints, ...slips]) {
    (findingsOf.get(one.member) ?? problems).push(placed(settings, one.member.row, one));
  }
  for (const [index, group] of groups.entries()) {
    if (index % stride === 0) yield 0.8 + (0.2 * index) / groups.length;
    tellMembers(group, settings, findingsOf);
  }
  return { groups: groups.map((group) => group.result), problems };
}

/** The members in portions, each with all members of its groups; those of no group come first. */
function* wholeGroups(members: readonly Member[]): Generator<readonly Member[], void> {
  const byGroup = new Map<string, Member[]>([['', []]]);
  for (const member of members) {
    const key = member.group.toLowerCase();
    const known = byGroup.get(key);
    if (known) known.push(member);
    else byGroup.set(key, [member]);
  }
  let portion: Member[] = [];
  for (const group of byGroup.values()) {
    for (const member of group) portion.push(member);
    if (portion.length < stride) continue;
    yield portion;
    portion = [];
  }
  if (portion.length > 0) yield portion;
}

function tellMembers(
  { result, statements, members }: EvaluatedGroup,
  settings: FoundTable,
  findingsOf: ReadonlyMap<Member, (PlacedFact | Finding)[]>,
): void {
  for (const statement of statements) {
    for (const [index, member] of members.entries()) {
      const finding = placed(settings, member.row, { ...statement, column: 'voting' });
      if (index === 0) result.findings = [...result.findings, finding];
      findingsOf.get(member)?.push(finding);
    }
  }
}
