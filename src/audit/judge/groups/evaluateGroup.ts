import { type LiveVote, liveVoteText } from '../../../method/voting/liveVote.ts';
import { votedThreshold } from '../../../method/voting/voted.ts';
import type { Voting } from '../../../method/voting/voting.ts';
import { convert } from '../../../units/convert.ts';
import { convertDetection } from '../../../units/detection.ts';
import type { Policy } from '../../model/policy.ts';
import type { GroupMember, GroupResult, GroupVote, MemberOut, MemberReason } from '../../model/report.ts';
import { trips, type ThresholdName, type ThresholdResult } from '../../model/threshold.ts';
import type { CorrectableGroup } from '../../../method/corrections/corrected.ts';
import { exceeds } from '../lines/line.ts';
import type { Member } from './members.ts';
import { type ChanceBasis, type ChanceLimit, type ChanceSeat, groupChance } from './groupChance.ts';
import { type OutPolicies, membersOut, voteLeft } from './membersOut.ts';

/** A group's result before its findings. */
export type JudgedGroup = Omit<GroupResult, 'findings'>;

/** A group's result with what its machine's chances are worked out from; `undefined` where there are none. */
export interface WorkedGroup {
  readonly result: JudgedGroup;
  readonly correctable: CorrectableGroup | undefined;
}

/** What groups are judged by. */
export type GroupPolicy = OutPolicies & Pick<Policy, 'tolerance' | 'coverage'>;

/** Which of its members' thresholds a group is judged by: the plain ones, or those while the start-up multiplier is on. */
type Stage = 'running' | 'start-up';

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
    const seats = members.map((member) => seatOf(member, threshold, stage, first));
    const intended = votedThreshold(
      seats.map((seat) => magnitude(seat.setpoint)),
      voting.m,
    );
    const vote = voteOf(seats, left, out, sign);
    const limit = stage === 'running' && trips(threshold) ? leastLimit(members, first) : null;
    const acts = Math.abs(vote.effective ?? NaN);
    const basis = trips(threshold)
      ? chanceOf(
          members,
          seats,
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
      ? members.map((member) => seatOf(asItWasFound(member), threshold, stage, first))
      : null;
    const result: JudgedGroup = {
      machine,
      name,
      voting: `${voting.m}oo${voting.n}`,
      threshold,
      multiplier: stage === 'running' ? 1 : multiplier,
      unit: first.unit?.text ?? null,
      intended: Number.isFinite(intended) ? sign * intended : null,
      ...vote,
      limit,
      late: isLate(acts, intended, policy.tolerance),
      beyondLimit: limit !== null && exceeds(acts, limit),
      members: seats,
      liveVoting: liveVoteText(left),
      out,
      chance: basis?.chance ?? null,
      asFound: found && voteOf(found, left, out, sign),
    };
    return [{ result, correctable: basis && correctable(basis, seats) }];
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
  seats: readonly GroupMember[],
  left: LiveVote,
  out: readonly MemberOut[],
  sign: number,
): GroupVote {
  if (left === 'tripped') {
    const cast = out.filter(({ policy }) => policy === 'trip');
    return { effective: 0, canTrip: true, decidedBy: cast.map(({ tag }) => tag) };
  }
  const m = left === 'cannot trip' ? Infinity : left.m;
  if (m === Infinity) return { effective: null, canTrip: false, decidedBy: [] };
  const effective = votedThreshold(
    seats.map((seat) => magnitude(seat.effective)),
    m,
  );
  const canTrip = Number.isFinite(effective);
  return {
    effective: canTrip ? sign * effective : null,
    canTrip,
    decidedBy: canTrip
      ? seats.filter((seat) => magnitude(seat.effective) === effective).map((seat) => seat.tag)
      : [],
  };
}

/** The chances of the live members; uncertainties are those of the lines of evidence that govern. */
function chanceOf(
  members: readonly Member[],
  seats: readonly GroupMember[],
  left: LiveVote,
  threshold: ThresholdName,
  stage: Stage,
  out: readonly MemberOut[],
  limit: ChanceLimit,
  coverage: number,
): ChanceBasis | undefined {
  if (!Number.isFinite(limit.level)) return undefined;
  const gone = new Set(out.map(({ tag }) => tag));
  const live = members.flatMap((member, at): ChanceSeat[] => {
    const seat = seats[at];
    if (!seat || gone.has(seat.tag)) return [];
    const { batch, sharedUncertainty } = member;
    const uncertainty = uncertaintyOf(thresholdOf(member, threshold, stage));
    const away = (level: number | null): number | null => (level === null ? null : Math.abs(level));
    return [
      {
        ...{ tag: seat.tag, effective: away(seat.effective), setpoint: away(seat.setpoint) },
        ...{ uncertainty, sharedUncertainty, batch },
      },
    ];
  });
  return groupChance(live, left, limit, coverage);
}

/** The expanded uncertainty behind the interval of a threshold: its nearer end is T/(1 + U). */
function uncertaintyOf(own: ThresholdResult | undefined): number | null {
  if (!own || own.effective === null || own.low === null || own.high === null) return null;
  const nearer = Math.min(Math.abs(own.low), Math.abs(own.high));
  return Math.max(0, Math.abs(own.effective) / nearer - 1);
}

/** A group's members with where each would act once its sensitivity is as configured. */
function correctable({ group, tags }: ChanceBasis, seats: readonly GroupMember[]): CorrectableGroup {
  const setpoints = new Map(seats.map(({ tag, setpoint }) => [tag, setpoint]));
  return {
    ...group,
    members: group.members.map((member, at) => {
      const tag = tags[at] ?? '';
      const meant = setpoints.get(tag) ?? null;
      const acts = member.threshold !== Infinity && meant !== null;
      return { ...member, tag, corrected: acts ? { ...member, threshold: Math.abs(meant) } : member };
    }),
  };
}

function asItWasFound(member: Member): Member {
  return member.asFound === null ? member : { ...member, thresholds: member.asFound };
}

/** A member's threshold at a stage: one without a multiplier of its own acts as ever while that of others is on. */
function thresholdOf({ thresholds }: Member, name: ThresholdName, stage: Stage): ThresholdResult | undefined {
  let plain: ThresholdResult | undefined;
  for (const threshold of thresholds) {
    if (threshold.name !== name) continue;
    if (threshold.multiplier === 1) plain = threshold;
    else if (stage === 'start-up') return threshold;
  }
  return plain;
}

/** A member's seat, in the unit of the group's first member; its effective threshold is `null` where it cannot act. */
function seatOf(member: Member, name: ThresholdName, stage: Stage, first: Member): GroupMember {
  const own = thresholdOf(member, name, stage);
  const meant = own && own.setpoint !== null ? own.multiplier * own.setpoint : null;
  const setpoint = inUnitOf(first, member, meant);
  const effective = own && acts(own) ? inUnitOf(first, member, own.effective) : null;
  const why = whyIdle(member, own, effective);
  return {
    tag: member.tag,
    setpoint: Number.isNaN(setpoint) ? null : setpoint,
    effective: why === null ? effective : null,
    why,
  };
}

function whyIdle(
  member: Member,
  own: ThresholdResult | undefined,
  effective: number | null,
): MemberReason | null {
  if (member.bypass === null) return 'its bypass mark is not understood';
  if (member.bypass) return 'in bypass';
  if (member.faulty) return 'marked faulty: its gap voltage is outside the fault limits';
  if (member.notAudited !== null) return member.notAudited;
  if (!own || own.setpoint === null) return 'no such setpoint';
  if (effective === null) return own.unreachable[0] ?? 'not known';
  return Number.isNaN(effective) ? 'its unit does not fit the group' : null;
}

function acts({ verdict }: ThresholdResult): boolean {
  return verdict !== 'unreachable' && verdict !== 'incomplete';
}

/** A level away from zero; infinite where there is none. */
function magnitude(level: number | null): number {
  return level === null ? Infinity : Math.abs(level);
}

function leastLimit(members: readonly Member[], first: Member): number | null {
  let least: number | null = null;
  for (const member of members) {
    const limit = inUnitOf(first, member, member.limit);
    if (limit !== null && !Number.isNaN(limit) && (least === null || limit < least)) least = limit;
  }
  return least;
}

function inUnitOf(first: Member, { unit, detection }: Member, value: number | null): number | null {
  if (value === null) return null;
  const converted = unit && first.unit ? convert(value, unit, first.unit) : value;
  return detection && first.detection ? convertDetection(converted, detection, first.detection) : converted;
}
