import { ownSign, type ChannelFacts, type PolicyFacts } from './facts.ts';
import type { ThresholdName, ThresholdTruth } from './judge.ts';
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
  /** Members whose threshold decides. */
  readonly decidedBy: readonly string[];
}

/** A member with its thresholds as they are now. */
export interface Member {
  readonly facts: ChannelFacts;
  readonly thresholds: readonly ThresholdTruth[];
}

/** Groups of one machine are one where their names are, whatever another machine calls its own. */
export function groupsOf(members: readonly Member[], policy: PolicyFacts, hair = 0): GroupTruth[] {
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
function entriesOf(members: readonly Member[], policy: PolicyFacts, hair: number): GroupTruth[] {
  const most = Math.max(...members.map(({ facts }) => facts.multiplier ?? 1));
  const names: ThresholdName[] = ['danger', 'alert', 'counter danger', 'counter alert'];
  return names.flatMap((name) =>
    (most > 1 ? [1, most] : [1]).flatMap((multiplier) => {
      const voters = members.map((member) => voterOf(member, name, multiplier > 1));
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
}

/**
 * A member by the line that governs it; what cannot act, is in bypass, marked faulty by the monitor or not known, for whatever
 * reason, counts as infinite: it casts no vote, which is what holds where the site says nothing else.
 */
function voterOf({ facts, thresholds }: Member, name: ThresholdName, multiplied: boolean): Voter {
  const factor = multiplied ? Math.max(1, facts.multiplier ?? 1) : 1;
  const own = thresholds.find((one) => one.name === name && one.multiplier === factor);
  const { setpoint, effective, verdict } = own ?? { setpoint: null, effective: null, verdict: null };
  const acts =
    verdict !== 'unreachable' && verdict !== 'incomplete' && facts.bypass === false && !isFaulty(facts);
  return {
    tag: facts.tag,
    setpoint: setpoint === null ? Infinity : factor * Math.abs(setpoint),
    effective: acts && effective !== null ? ownSign(setpoint ?? 1) * effective : Infinity,
  };
}

/** The monitor takes a gap voltage outside its fault limits, as it is now, for a broken chain. */
function isFaulty(facts: ChannelFacts): boolean {
  const { gapVoltage } = evidenceNow(facts);
  if (gapVoltage === null) return false;
  return gapVoltage > (facts.faultHigh ?? Infinity) || gapVoltage < (facts.faultLow ?? -Infinity);
}

function entry(
  members: readonly Member[],
  voters: readonly Voter[],
  threshold: ThresholdName,
  multiplier: number,
  { tolerance }: PolicyFacts,
  hair: number,
): GroupTruth {
  const { machine, group, voting } = members[0]!.facts;
  const votes = Number(/^\d+/.exec(voting ?? '')?.[0] ?? NaN);
  const smallest = (values: readonly number[]): number =>
    values.toSorted((one, other) => one - other)[votes - 1] ?? Infinity;
  const [intended, effective] = [
    smallest(voters.map((voter) => voter.setpoint)),
    smallest(voters.map((voter) => voter.effective)),
  ];
  const limit = Math.min(...members.map(({ facts }) => facts.limit ?? Infinity));
  const sign = threshold.startsWith('counter') ? -1 : 1;
  const known = (value: number): number | null => (value === Infinity ? null : sign * value);
  return {
    machine,
    name: group ?? '',
    voting: voting ?? '',
    threshold,
    multiplier,
    intended: known(intended),
    effective: known(effective),
    canTrip: effective !== Infinity,
    late: effective !== Infinity && effective > (intended / (1 - tolerance)) * (1 + hair),
    beyondLimit:
      multiplier === 1 &&
      (threshold === 'danger' || threshold === 'counter danger') &&
      effective !== Infinity &&
      effective > limit * (1 + hair),
    decidedBy:
      effective === Infinity
        ? []
        : voters.filter((voter) => Math.abs(voter.effective / effective - 1) < 1e-9).map(({ tag }) => tag),
  };
}
