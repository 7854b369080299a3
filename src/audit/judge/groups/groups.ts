import { thresholdNames, trips } from '../../model/threshold.ts';
import { factOf, type Fact } from '../../model/findings.ts';
import { type Voting, parseVoting } from '../../../method/voting/voting.ts';
import { evaluateGroup, type GroupPolicy, type WorkedGroup, type JudgedGroup } from './evaluateGroup.ts';
import { membersByGroup, type Member } from './members.ts';

/** What a voting text means; `undefined` where it is none. */
type ReadVoting = (text: string) => Voting | undefined;

export interface EvaluatedGroup extends WorkedGroup {
  readonly facts: readonly Fact[];
  readonly members: readonly Member[];
}

/** Something about a member's group that keeps it from being worked out as written. */
export interface GroupDiagnostic {
  readonly member: Member;
  readonly column: 'group' | 'voting';
  readonly fact: Fact;
}

/** Works out every voting group, for each threshold that its members have. */
export function evaluateGroups(
  members: readonly Member[],
  policy: GroupPolicy,
): { groups: EvaluatedGroup[]; diagnostics: GroupDiagnostic[] } {
  const diagnostics: GroupDiagnostic[] = [];
  const read = votingReader();
  for (const member of members) {
    if (member.group !== '') continue;
    const alone = member.voting === '' || read(member.voting)?.n === 1;
    if (!alone) diagnostics.push(groupMissing(member));
  }
  const groups: EvaluatedGroup[] = [];
  for (const all of membersByGroup(members)) {
    const [first] = all;
    const voting = votingOf(all, read, diagnostics);
    if (!first || !voting) continue;
    for (const threshold of thresholdNames) {
      for (const worked of evaluateGroup(first.machine, first.group, voting, threshold, all, policy))
        groups.push({
          result: worked.result,
          correctable: worked.correctable,
          facts: groupFindings(worked.result),
          members: all,
        });
    }
    if (voting.n !== all.length)
      diagnostics.push(...all.map((member) => sizeDiffers(member, voting, all.length)));
  }
  return { groups, diagnostics };
}

function votingOf(
  members: readonly Member[],
  read: ReadVoting,
  diagnostics: GroupDiagnostic[],
): Voting | undefined {
  let strictest: Voting | undefined;
  const said = new Set<string>();
  for (const member of members) {
    if (member.voting === '') continue;
    const voting = read(member.voting);
    if (!voting) {
      const fact = factOf('voting-not-understood', 'warning', { voting: member.voting });
      diagnostics.push({ member, column: 'voting', fact });
      continue;
    }
    said.add(textOf(voting));
    if (!strictest || voting.m > strictest.m || (voting.m === strictest.m && voting.n < strictest.n))
      strictest = voting;
  }
  const group = members[0]?.group ?? '';
  const ofAll = (fact: Fact) => {
    diagnostics.push(...members.map((member) => ({ member, column: 'voting' as const, fact })));
  };
  if (!strictest) {
    if (members.every(({ voting }) => voting === '')) ofAll(factOf('voting-missing', 'warning', { group }));
  } else if (said.size > 1) {
    const values = { group, votings: [...said], used: textOf(strictest) };
    ofAll(factOf('voting-contradicts', 'warning', values));
  }
  return strictest;
}

function textOf({ m, n }: Voting): string {
  return `${m}oo${n}`;
}

function groupMissing(member: Member): GroupDiagnostic {
  const fact = factOf('group-missing', 'warning', { voting: member.voting });
  return { member, column: 'group', fact };
}

function sizeDiffers(member: Member, voting: Voting, size: number): GroupDiagnostic {
  const values = { group: member.group, voting: textOf(voting), needed: voting.n, listed: size };
  return { member, column: 'group', fact: factOf('group-size-differs', 'warning', values) };
}

/** Reads voting texts, each distinct one once. */
function votingReader(): ReadVoting {
  const known = new Map<string, Voting | undefined>();
  return (text) => {
    if (!known.has(text)) known.set(text, parseVoting(text));
    return known.get(text);
  };
}

const none: readonly Fact[] = [];

/** What there is to say about a voting group as a whole. */
function groupFindings(result: JudgedGroup): readonly Fact[] {
  const { name: group, voting, threshold, multiplier, effective, intended, limit, decidedBy } = result;
  const trip = trips(threshold);
  const severity = trip ? 'critical' : 'warning';
  const vote = { group, voting, threshold, multiplier };
  if (effective === null) {
    const idle = result.members
      .filter((member) => member.effective === null)
      .map(({ tag, why }) => ({ tag, why }));
    return [factOf(trip ? 'group-cannot-trip' : 'group-cannot-act', severity, { ...vote, idle })];
  }
  if (result.liveVoting === 'tripped')
    return [factOf('group-tripped', 'warning', { ...vote, out: result.out })];
  if (!result.late && !result.beyondLimit) return none;
  const found: Fact[] = [];
  const acting = { ...vote, effective, unit: result.unit ?? '', decidedBy };
  if (result.beyondLimit && limit !== null)
    found.push(factOf('group-beyond-limit', 'critical', { ...acting, limit }));
  if (result.late) found.push(factOf('group-late', severity, { ...acting, intended: intended ?? NaN }));
  return found;
}
