import { type LiveVote, liveVoteText } from '../../../method/voting/liveVote.ts';
import { type Voting, votedThreshold } from '../../../method/voting/voting.ts';
import type { Policy } from '../../model/policy.ts';
import type { GroupMember, GroupResult, GroupVote, MemberOutOfService } from '../../model/report.ts';
import { trips, type Spread, type ThresholdName, type ThresholdResult } from '../../model/threshold.ts';
import type { CorrectableGroup } from '../../../method/corrections/corrected.ts';
import { exceeds } from '../lines/line.ts';
import { type Member, type OutPolicies, membersOut, voteLeft } from './members.ts';
import { type ChanceBasis, type ChanceLimit, type ChanceVoter, groupChance } from './groupChance.ts';
import { type Stage, leastLimit, magnitude, voterOf, thresholdOf } from './voter.ts';

/** A group's result before its findings. */
export type JudgedGroup = Omit<GroupResult, 'findings'>;

/** A group's result with what its machine's chances are worked out from; `undefined` where there are none. */
export interface WorkedGroup {
  readonly result: JudgedGroup;
  readonly correctable: CorrectableGroup | undefined;
}

/** What groups are judged by. */
export type GroupPolicy = OutPolicies & Pick<Policy, 'tolerance' | 'coverage'>;

/**
 * Where one threshold of an M-out-of-N group really acts now: the M-th smallest of its members' effective thresholds, in the
 * unit of its first member. Positions count away from zero in the threshold's own direction. Once for the plain setpoints
 * and, where a member has a start-up multiplier, once more while that is on. Empty where no member has this threshold.
 */
export function evaluateGroup(
  machine: string,
  name: string,
  voting: Voting,
  threshold: ThresholdName,
  members: readonly Member[],
  policy: GroupPolicy,
): WorkedGroup[] {
  const out = membersOut(members, policy);
  const left = voteLeft(voting, members.length, out);
  const multiplier = greatestMultiplier(members);
  const stages: readonly Stage[] = multiplier > 1 ? ['running', 'start-up'] : ['running'];
  return stages.flatMap((stage) => {
    const first = members.find(
      (member) => (thresholdOf(member, threshold, stage)?.setpoint ?? null) !== null,
    );
    if (!first) return [];
    const sign = threshold.startsWith('counter') ? -1 : 1;
    const voters = members.map((member) => voterOf(member, threshold, stage, first));
    const intended = votedThreshold(
      voters.map((voter) => magnitude(voter.setpoint)),
      voting.m,
    );
    const vote = voteOf(voters, left, out, sign);
    const limit = stage === 'running' && trips(threshold) ? leastLimit(members, first) : null;
    const acts = Math.abs(vote.effective ?? NaN);
    const basis = trips(threshold)
      ? chanceOf(
          members,
          voters,
          left,
          threshold,
          stage,
          out,
          {
            level: limit ?? intended / (1 - policy.tolerance),
            of: limit === null ? 'where late begins' : 'its limit',
          },
          policy.coverage,
        )
      : undefined;
    const found = members.some(({ asFound }) => asFound !== null)
      ? members.map((member) => voterOf(asItWasFound(member), threshold, stage, first))
      : null;
    const result: JudgedGroup = {
      machine,
      name,
      voting: `${voting.m}oo${voting.n}`,
      threshold,
      multiplier: stage === 'running' ? 1 : multiplier,
      unit: first.unit?.text ?? null,
      intended: Number.isFinite(intended) ? sign * intended : null,
      effective: vote.effective,
      canTrip: vote.canTrip,
      decidedBy: vote.decidedBy,
      limit,
      late: isLate(acts, intended, policy.tolerance),
      beyondLimit: limit !== null && exceeds(acts, limit),
      members: voters,
      liveVoting: liveVoteText(left),
      out,
      chance: basis?.chance ?? null,
      asFound: found && voteOf(found, left, out, sign),
    };
    return [{ result, correctable: basis && correctable(basis, voters) }];
  });
}

/** The greatest start-up multiplier of all members; 1 where none has one. */
function greatestMultiplier(members: readonly Member[]): number {
  let greatest = 1;
  for (const { thresholds } of members)
    for (const { multiplier } of thresholds) if (multiplier > greatest) greatest = multiplier;
  return greatest;
}

/** Whether a vote acts later than the tolerance of a sensitivity allows; levels away from zero, in one unit. */
function isLate(acts: number, meant: number, tolerance: number): boolean {
  return acts > (meant / (1 - tolerance)) * (1 + 1e-12);
}

/**
 * Where the vote that is left of these members acts, and whose threshold decides: at once, by those out whose votes are cast,
 * where it has tripped already.
 */
function voteOf(
  voters: readonly GroupMember[],
  left: LiveVote,
  out: readonly MemberOutOfService[],
  sign: number,
): GroupVote {
  if (left === 'tripped') {
    const cast = out.filter(({ policy }) => policy === 'trip');
    return { effective: 0, canTrip: true, decidedBy: cast.map(({ tag }) => tag) };
  }
  const m = left === 'cannot trip' ? Infinity : left.m;
  if (m === Infinity) return { effective: null, canTrip: false, decidedBy: [] };
  const effective = votedThreshold(
    voters.map((voter) => magnitude(voter.effective)),
    m,
  );
  const canTrip = Number.isFinite(effective);
  return {
    effective: canTrip ? sign * effective : null,
    canTrip,
    decidedBy: canTrip
      ? voters.filter((voter) => magnitude(voter.effective) === effective).map((voter) => voter.tag)
      : [],
  };
}

/** The chances of the live members; uncertainties are those of the lines of evidence that govern. */
function chanceOf(
  members: readonly Member[],
  voters: readonly GroupMember[],
  left: LiveVote,
  threshold: ThresholdName,
  stage: Stage,
  out: readonly MemberOutOfService[],
  limit: ChanceLimit,
  coverage: number,
): ChanceBasis | undefined {
  if (!Number.isFinite(limit.level)) return undefined;
  const gone = new Set(out.map(({ tag }) => tag));
  const live = members.flatMap((member, at): ChanceVoter[] => {
    const voter = voters[at];
    if (!voter || gone.has(voter.tag)) return [];
    const { batch, sharedUncertainty } = member;
    const own = thresholdOf(member, threshold, stage);
    const spread = own && voter.effective !== null ? inUnitOfGroup(own, voter.effective) : null;
    const away = (level: number | null): number | null => (level === null ? null : Math.abs(level));
    return [
      {
        tag: voter.tag,
        effective: away(voter.effective),
        setpoint: away(voter.setpoint),
        spread,
        sharedUncertainty,
        batch,
      },
    ];
  });
  return groupChance(live, left, limit, coverage);
}

/** How widely a member's threshold is known, brought to the unit of its group, in which it acts at `effective`. */
function inUnitOfGroup({ effective: own, spread }: ThresholdResult, effective: number): Spread | null {
  if (spread === null || own === null || own === 0) return spread;
  const scale = effective / own;
  const { ofDivisor, ofNumerator, both } = spread;
  return { ofDivisor, ofNumerator: ofNumerator * scale, both: both * scale };
}

/** A group's members with where each would act once its sensitivity is as configured. */
function correctable({ group, tags }: ChanceBasis, voters: readonly GroupMember[]): CorrectableGroup {
  const setpoints = new Map(voters.map(({ tag, setpoint }) => [tag, setpoint]));
  return {
    m: group.m,
    limit: group.limit,
    members: group.members.map((member, at) => {
      const tag = tags[at] ?? '';
      const meant = setpoints.get(tag) ?? null;
      const acts = member.threshold !== Infinity && meant !== null;
      const { threshold, shared, own, offset = 0, both = 0, batch } = member;
      const corrected = acts ? { ...member, threshold: Math.abs(meant) } : member;
      return { threshold, shared, own, offset, both, batch, tag, corrected };
    }),
  };
}

function asItWasFound(member: Member): Member {
  return member.asFound === null ? member : { ...member, thresholds: member.asFound };
}
