import { factAt, type PlacedFact } from '../../model/findings.ts';
import type { WorkedGroup } from '../groups/evaluateGroup.ts';
import { evaluateGroups, type EvaluatedGroup, type GroupDiagnostic } from '../groups/groups.ts';
import { membersByGroup, type Member } from '../groups/members.ts';
import { peerSlips } from '../groups/peers.ts';
import type { Policy } from '../../model/policy.ts';
import type { JudgedChannel } from './context.ts';

/** A judged group with what was found of it. */
interface GroupWithFacts extends WorkedGroup {
  readonly facts: readonly PlacedFact[];
}

export interface JoinedGroups {
  readonly groups: readonly GroupWithFacts[];
  /** What there is to say about members that are no channels of the list. */
  readonly problems: readonly PlacedFact[];
}

/** Members between two pauses; a group is never torn apart. */
const stride = 250;

/**
 * Works out the voting groups of all channels, and adds what there is to say about a group to what was found of each of its
 * members. `unjoined` are members of which only the settings are known. Yields the part done, from 0 to 1.
 */
export function* joinGroups(
  judged: readonly JudgedChannel[],
  unjoined: readonly Member[],
  policy: Policy,
): Generator<number, JoinedGroups, void> {
  const channelOf = new Map<Member, JudgedChannel>();
  for (const channel of judged) if (channel.member) channelOf.set(channel.member, channel);
  const members = [...channelOf.keys(), ...unjoined];
  const groups: EvaluatedGroup[] = [];
  const diagnostics: GroupDiagnostic[] = [];
  const slips: GroupDiagnostic[] = [];
  let done = 0;
  for (const some of wholeGroups(members)) {
    const found = evaluateGroups(some, policy);
    for (const group of found.groups) groups.push(group);
    for (const one of found.diagnostics) diagnostics.push(one);
    for (const slip of peerSlips(found.groups)) slips.push(slip);
    done += some.length;
    yield (0.8 * done) / members.length;
  }

  const problems: PlacedFact[] = [];
  for (const { member, column, fact } of [...diagnostics, ...slips]) {
    (channelOf.get(member)?.facts ?? problems).push(factAt(member.places[column], fact));
  }
  const results: GroupWithFacts[] = [];
  for (const [index, group] of groups.entries()) {
    if (index % stride === 0) yield 0.8 + (0.2 * index) / groups.length;
    results.push(withFacts(group, channelOf));
  }
  return { groups: results, problems };
}

/** The members in portions, each with all members of its groups; those of no group come first. */
function* wholeGroups(members: readonly Member[]): Generator<readonly Member[], void> {
  let portion: Member[] = members.filter(({ group }) => group === '');
  for (const group of membersByGroup(members)) {
    for (const member of group) portion.push(member);
    if (portion.length < stride) continue;
    yield portion;
    portion = [];
  }
  if (portion.length > 0) yield portion;
}

function withFacts(
  { result, correctable, facts, members }: EvaluatedGroup,
  channelOf: ReadonlyMap<Member, JudgedChannel>,
): GroupWithFacts {
  const placed: PlacedFact[] = [];
  for (const fact of facts) {
    for (const [index, member] of members.entries()) {
      const one = factAt(member.places.voting, fact);
      if (index === 0) placed.push(one);
      channelOf.get(member)?.ofVerdicts.push(one);
    }
  }
  return { result, correctable, facts: placed };
}
