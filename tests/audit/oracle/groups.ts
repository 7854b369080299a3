import type { Vote, Voter as ChanceVoter } from './chances.ts';
import { ownSign, type ChannelFacts, type OutPolicy, type PolicyFacts } from './facts.ts';
import type { ThresholdName, ThresholdTruth } from './judge.ts';
import { atCoverage } from './lines.ts';
import { evidenceNow } from './now.ts';

export interface GroupTruth {
  readonly machine: string;
  readonly name: string;
  readonly voting: string;
  readonly threshold: ThresholdName;
  readonly multiplier: number;
  readonly intended: number | null;
  readonly effective: number | null;
  readonly canTrip: boolean;
  /** Later than the intended one by more than the tolerance. */
  readonly late: boolean;
  /** Of a danger: later than the least limit of its members. */
  readonly beyondLimit: boolean;
  /** Members whose threshold decides; those that cast their votes where it has tripped. */
  readonly decidedBy: readonly string[];
  readonly liveVoting: string;
  readonly out: readonly MemberOut[];
}

interface MemberOut {
  readonly tag: string;
  readonly because: 'bypassed' | 'faulty';
  readonly policy: OutPolicy;
  readonly saidBy: 'group' | 'site' | null;
}

/** A group with its vote as chances are worked out. */
export interface WorkedGroup {
  readonly truth: GroupTruth;
  /** Of a danger against its limit; `null` where it has none, or has tripped. */
  readonly vote: Vote | null;
  /** Members in service. */
  readonly live: readonly Voter[];
  readonly hasLimit: boolean;
}

/** A member with its thresholds as they are now. */
export interface Member {
  readonly facts: ChannelFacts;
  readonly thresholds: readonly ThresholdTruth[];
}

/** Groups of one machine are one where their names are, whatever another machine calls its own. */
export function groupsOf(members: readonly Member[], policy: PolicyFacts, hair = 0): WorkedGroup[] {
  const byGroup = new Map<string, Member[]>();
  for (const member of members) {
    const { machine, group, voting } = member.facts;
    if (group === null || voting === null) continue;
    const key = JSON.stringify([machine.toLowerCase(), group.toLowerCase()]);
    byGroup.set(key, [...(byGroup.get(key) ?? []), member]);
  }
  return [...byGroup.values()].flatMap((some) => entriesOf(some, policy, hair));
}

/** One entry a threshold that some member has, and one more while the multiplier is on. */
function entriesOf(members: readonly Member[], policy: PolicyFacts, hair: number): WorkedGroup[] {
  const most = Math.max(...members.map(({ facts }) => facts.multiplier ?? 1));
  const names: ThresholdName[] = ['danger', 'alert', 'counter danger', 'counter alert'];
  return names.flatMap((name) =>
    (most > 1 ? [1, most] : [1]).flatMap((multiplier) => {
      const voters = members.map((member) => voterOf(member, name, multiplier > 1, policy));
      return voters.every(({ setpoint }) => setpoint === Infinity)
        ? []
        : [entry(members, voters, name, multiplier, policy, hair)];
    }),
  );
}

interface Voter {
  readonly tag: string;
  readonly setpoint: number;
  readonly effective: number;
  readonly out: MemberOut | null;
  readonly chance: ChanceVoter;
  readonly isUncertain: boolean;
}

/** A member by the line that governs it; what cannot act, or is not known, for whatever reason, counts as infinite. */
function voterOf(
  { facts, thresholds }: Member,
  name: ThresholdName,
  multiplied: boolean,
  policy: PolicyFacts,
): Voter {
  const factor = multiplied ? Math.max(1, facts.multiplier ?? 1) : 1;
  const own = thresholds.find((one) => one.name === name && one.multiplier === factor);
  const { setpoint, effective, verdict, spread } = own ?? {
    setpoint: null,
    effective: null,
    verdict: null,
    spread: null,
  };
  const acts = verdict !== 'unreachable' && verdict !== 'incomplete' && facts.bypass === false;
  const out = outOf(facts, policy);
  const level = acts && out === null && effective !== null ? ownSign(setpoint ?? 1) * effective : Infinity;
  const { ofDivisor, ofNumerator, both } = spread ?? { ofDivisor: 0, ofNumerator: 0, both: 0 };
  const k = policy.coverage;
  // No more than the whole can be shared.
  const shared = Math.min(atCoverage(facts.sharedUncertainty, facts, policy) ?? 0, ofDivisor);
  const batch = facts.batch.trim().toLowerCase();
  return {
    tag: facts.tag,
    setpoint: setpoint === null ? Infinity : factor * Math.abs(setpoint),
    effective: level,
    out,
    isUncertain: spread !== null && level !== Infinity,
    chance: {
      threshold: level,
      shared: shared / k,
      own: Math.sqrt(ofDivisor ** 2 - shared ** 2) / k,
      zero: ofNumerator / k,
      both: both / k ** 2,
      batch: batch === '' ? null : batch,
    },
  };
}

/** Whether a member is out of service, and what the site, or it of this group, has its vote be; nothing said: no vote. */
function outOf(facts: ChannelFacts, policy: PolicyFacts): MemberOut | null {
  const because = facts.bypass === true ? 'bypassed' : isFaulty(facts) ? 'faulty' : null;
  if (because === null) return null;
  const lower = (text: string | null): string => (text ?? '').toLowerCase();
  const named = policy.groups.filter(({ group }) => lower(group) === lower(facts.group));
  const own =
    named.find(({ machine }) => machine !== '' && lower(machine) === lower(facts.machine)) ??
    named.find(({ machine }) => machine === '');
  const [ofGroup, ofSite] = [own?.[because] ?? null, policy[because]];
  const saidBy = ofGroup !== null ? 'group' : ofSite !== null ? 'site' : null;
  return { tag: facts.tag, because, policy: ofGroup ?? ofSite ?? 'no-trip', saidBy };
}

/** The monitor takes a gap voltage outside its fault limits, as it is now, for a broken chain. */
function isFaulty(facts: ChannelFacts): boolean {
  const { gapVoltage } = evidenceNow(facts);
  if (gapVoltage === null) return false;
  return gapVoltage > (facts.faultHigh ?? Infinity) || gapVoltage < (facts.faultLow ?? -Infinity);
}

/**
 * Where the votes are there: those that reduce the vote leave it, and of as many as are left none is needed that is not
 * there; a vote that is cast acts at 0, one that is not never. `needed` counts live votes.
 */
function liveVote(
  voters: readonly Voter[],
  m: number,
): { needed: number; live: readonly Voter[]; text: string } {
  const count = (policy: OutPolicy): number => voters.filter(({ out }) => out?.policy === policy).length;
  const live = voters.filter(({ out }) => out === null);
  const needed = Math.min(m, voters.length - count('reduce')) - count('trip');
  const tripped = needed <= 0 && count('trip') > 0;
  const never = live.length === 0 || needed > live.length;
  const text = tripped ? 'tripped' : never ? 'cannot trip' : `${needed}oo${live.length}`;
  return { needed: tripped ? 0 : never ? Infinity : needed, live, text };
}

function entry(
  members: readonly Member[],
  voters: readonly Voter[],
  threshold: ThresholdName,
  multiplier: number,
  policy: PolicyFacts,
  hair: number,
): WorkedGroup {
  const { machine, group, voting } = members[0]!.facts;
  const { tolerance } = policy;
  const votes = Number(/^\d+/.exec(voting ?? '')?.[0] ?? NaN);
  const smallest = (values: readonly number[], at: number): number =>
    values.toSorted((one, other) => one - other)[at - 1] ?? Infinity;
  const { needed, live, text } = liveVote(voters, votes);
  const intended = smallest(
    voters.map((voter) => voter.setpoint),
    votes,
  );
  const effective =
    needed === 0
      ? 0
      : smallest(
          live.map((voter) => voter.effective),
          needed,
        );
  const isDanger = threshold === 'danger' || threshold === 'counter danger';
  const limit =
    multiplier === 1 && isDanger
      ? Math.min(...members.map(({ facts }) => facts.limit ?? Infinity))
      : Infinity;
  const sign = threshold.startsWith('counter') ? -1 : 1;
  const known = (value: number): number | null => (value === Infinity ? null : sign * value + 0);
  const level = limit === Infinity ? intended / (1 - tolerance) : limit;
  const vote: Vote | null =
    isDanger && needed > 0 && level !== Infinity
      ? // What cannot trip is late for certain: more votes than there are members.
        { votes: needed, limit: level, members: live.map((voter) => voter.chance) }
      : null;
  const cast = voters.filter(({ out }) => out?.policy === 'trip');
  const deciding = live.filter((voter) => Math.abs(voter.effective / effective - 1) < 1e-9);
  return {
    vote,
    live,
    hasLimit: limit !== Infinity,
    truth: {
      machine,
      name: group ?? '',
      voting: voting ?? '',
      threshold,
      multiplier,
      intended: known(intended),
      effective: known(effective),
      canTrip: effective !== Infinity,
      late: effective !== Infinity && effective > (intended / (1 - tolerance)) * (1 + hair),
      beyondLimit: effective !== Infinity && effective > limit * (1 + hair),
      decidedBy: effective === Infinity ? [] : (needed === 0 ? cast : deciding).map(({ tag }) => tag),
      liveVoting: text,
      out: voters.flatMap(({ out }) => out ?? []),
    },
  };
}
