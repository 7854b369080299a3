import { thresholdNames } from '../../model/threshold.ts';
import type { Severity } from '../../model/findings.ts';
import type { Voting } from '../../../method/voting/voting.ts';
import { evaluateGroup, type OpenGroup } from './evaluateGroup.ts';
import { groupFindings, type GroupStatement } from './groupFindings.ts';
import type { Member } from './members.ts';
import { votingReader, type ReadVoting } from './votingReader.ts';

export interface EvaluatedGroup {
  readonly result: OpenGroup;
  readonly statements: readonly GroupStatement[];
  readonly members: readonly Member[];
}

/** Something about a member's group that keeps it from being worked out as written. */
export interface GroupComplaint {
  readonly member: Member;
  readonly column: 'group' | 'voting';
  readonly rule: string;
  readonly severity: Severity;
  readonly message: string;
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
      if (result) groups.push({ result, statements: groupFindings(result, tolerance), members: all });
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
      const message = `The voting '${member.voting.slice(0, 40)}' is not understood; write it like 1oo2 or 2oo3.`;
      complaints.push({
        member,
        column: 'voting',
        rule: 'voting-not-understood',
        severity: 'warning',
        message,
      });
      continue;
    }
    said.add(`${voting.m}oo${voting.n}`);
    if (!strictest || voting.m > strictest.m || (voting.m === strictest.m && voting.n < strictest.n))
      strictest = voting;
  }
  if (!strictest) {
    const message = `The voting of group '${members[0]?.group ?? ''}' is missing, so it can't be told when the group acts; enter it like 1oo2.`;
    complaints.push(
      ...members.map((member) => ({
        member,
        column: 'voting' as const,
        rule: 'voting-missing',
        severity: 'warning' as const,
        message,
      })),
    );
  } else if (said.size > 1) {
    const message = `The members of group '${members[0]?.group ?? ''}' name different votings (${[...said].join(', ')}); ${strictest.m}oo${strictest.n} was used, which acts last. Correct them.`;
    complaints.push(
      ...members.map((member) => ({
        member,
        column: 'voting' as const,
        rule: 'voting-contradicts',
        severity: 'warning' as const,
        message,
      })),
    );
  }
  return strictest;
}

function groupMissing(member: Member): GroupComplaint {
  const message = `The voting is ${member.voting} but no voting group is named, so its other members are not known; enter the group.`;
  return { member, column: 'group', rule: 'group-missing', severity: 'warning', message };
}

function sizeDiffers(member: Member, voting: Voting, size: number): GroupComplaint {
  const message = `Group '${member.group}' votes ${voting.m}oo${voting.n} but ${size} of the channels listed belong to it, not ${voting.n}. Missing members were not counted. Check the group.`;
  return { member, column: 'group', rule: 'group-size-differs', severity: 'warning', message };
}
