import { thresholdNames } from '../../model/threshold.ts';
import { factOf, type Fact } from '../../model/findings.ts';
import type { Voting } from '../../../method/voting/voting.ts';
import { evaluateGroup, type OpenGroup } from './evaluateGroup.ts';
import { groupFindings } from './groupFindings.ts';
import type { Member } from './members.ts';
import { votingReader, type ReadVoting } from './votingReader.ts';

export interface EvaluatedGroup {
  readonly result: OpenGroup;
  readonly facts: readonly Fact[];
  readonly members: readonly Member[];
}

/** Something about a member's group that keeps it from being worked out as written. */
export interface GroupComplaint {
  readonly member: Member;
  readonly column: 'group' | 'voting';
  readonly fact: Fact;
}

/** Works out every voting group of the settings, for each threshold that its members have. */
export function evaluateGroups(
  members: readonly Member[],
  tolerance: number,
): { groups: EvaluatedGroup[]; complaints: GroupComplaint[] } {
  const complaints: GroupComplaint[] = [];
  const read = votingReader();
  const byName = new Map<string, Member[]>();
  for (const member of members) {
    if (member.group === '') {
      const alone = member.voting === '' || read(member.voting)?.n === 1;
      if (!alone) complaints.push(groupMissing(member));
      continue;
    }
    const key = member.group.toLowerCase();
    const known = byName.get(key);
    if (known) known.push(member);
    else byName.set(key, [member]);
  }
  const groups: EvaluatedGroup[] = [];
  for (const all of byName.values()) {
    const [first] = all;
    const voting = votingOf(all, read, complaints);
    if (!first || !voting) continue;
    for (const threshold of thresholdNames) {
      const result = evaluateGroup(first.group, voting, threshold, all);
      if (result) groups.push({ result, facts: groupFindings(result, tolerance), members: all });
    }
    if (voting.n !== all.length)
      complaints.push(...all.map((member) => sizeDiffers(member, voting, all.length)));
  }
  return { groups, complaints };
}

function votingOf(
  members: readonly Member[],
  read: ReadVoting,
  complaints: GroupComplaint[],
): Voting | undefined {
  let strictest: Voting | undefined;
  const said = new Set<string>();
  for (const member of members) {
    if (member.voting === '') continue;
    const voting = read(member.voting);
    if (!voting) {
      const fact = factOf('voting-not-understood', 'warning', { voting: member.voting });
      complaints.push({ member, column: 'voting', fact });
      continue;
    }
    said.add(textOf(voting));
    if (!strictest || voting.m > strictest.m || (voting.m === strictest.m && voting.n < strictest.n))
      strictest = voting;
  }
  const group = members[0]?.group ?? '';
  const ofAll = (fact: Fact) => {
    complaints.push(...members.map((member) => ({ member, column: 'voting' as const, fact })));
  };
  if (!strictest) {
    ofAll(factOf('voting-missing', 'warning', { group }));
  } else if (said.size > 1) {
    const values = { group, votings: [...said], used: textOf(strictest) };
    ofAll(factOf('voting-contradicts', 'warning', values));
  }
  return strictest;
}

function textOf({ m, n }: Voting): string {
  return `${m}oo${n}`;
}

function groupMissing(member: Member): GroupComplaint {
  const fact = factOf('group-missing', 'warning', { voting: member.voting });
  return { member, column: 'group', fact };
}

function sizeDiffers(member: Member, voting: Voting, size: number): GroupComplaint {
  const values = { group: member.group, voting: textOf(voting), needed: voting.n, listed: size };
  return { member, column: 'group', fact: factOf('group-size-differs', 'warning', values) };
}
