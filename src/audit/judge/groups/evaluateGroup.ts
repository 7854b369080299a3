import type { ThresholdName, ThresholdResult } from '../../model/threshold.ts';
import type { Finding, PlacedFact } from '../../model/findings.ts';
import { votedThreshold } from '../../../method/voting/voted.ts';
import type { Voting } from '../../../method/voting/voting.ts';
import { convertDetection } from '../../../units/detection.ts';
import { convert } from '../../../units/convert.ts';
import type { GroupMember, GroupResult, GroupVote } from '../../model/report.ts';
import type { Member } from './members.ts';

/** A group's result, still open for its findings. */
export type OpenGroup = Omit<GroupResult, 'findings'> & { findings: readonly (PlacedFact | Finding)[] };

const none: OpenGroup['findings'] = [];

/**
 * Where one threshold of an M-out-of-N group really acts: the M-th smallest of its members' effective thresholds, in the
 * unit of its first member. Positions count away from zero in the threshold's own direction. `undefined` where no member
 * has this threshold.
 */
export function evaluateGroup(
  name: string,
  voting: Voting,
  threshold: ThresholdName,
  members: readonly Member[],
): OpenGroup | undefined {
  const first = members.find((member) => setpointOf(member, threshold) !== null);
  if (!first) return undefined;
  const sign = threshold.startsWith('counter') ? -1 : 1;
  const seats = members.map((member) => seatOf(member, threshold, first));
  const intended = votedThreshold(
    seats.map((seat) => magnitude(seat.setpoint)),
    voting.m,
  );
  const left = members.some(({ asLeft }) => asLeft !== null)
    ? members.map((member) => seatOf(asLeftWhereJudged(member), threshold, first))
    : null;
  return {
    name,
    voting: `${voting.m}oo${voting.n}`,
    threshold,
    unit: first.unit?.text ?? null,
    intended: Number.isFinite(intended) ? sign * intended : null,
    ...voteOf(seats, voting, sign),
    limit: leastLimit(members, first),
    members: seats,
    asLeft: left && voteOf(left, voting, sign),
    findings: none,
  };
}

/** Where the vote of these members acts, and whose threshold decides. */
function voteOf(seats: readonly GroupMember[], { m }: Voting, sign: number): GroupVote {
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

function asLeftWhereJudged(member: Member): Member {
  return member.asLeft === null ? member : { ...member, thresholds: member.asLeft };
}

function thresholdOf(member: Member, name: ThresholdName): ThresholdResult | undefined {
  for (const threshold of member.thresholds) {
    if (threshold.name === name && threshold.multiplier === 1) return threshold;
  }
  return undefined;
}

function setpointOf(member: Member, name: ThresholdName): number | null {
  return thresholdOf(member, name)?.setpoint ?? null;
}

/** A member's seat, in the unit of the group's first member; its effective threshold is `null` where it cannot act. */
function seatOf(member: Member, name: ThresholdName, first: Member): GroupMember {
  const own = thresholdOf(member, name);
  const setpoint = inUnitOf(first, member, own?.setpoint ?? null);
  const effective = own && acts(own) ? inUnitOf(first, member, own.effective) : null;
  const why = whyIdle(member, own, effective, name);
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
  name: ThresholdName,
): string | null {
  if (member.bypass === null) return 'its bypass mark is not understood';
  if (member.bypass) return 'in bypass';
  if (member.notAudited !== null) return member.notAudited;
  if (!own || own.setpoint === null) return `no ${name} setpoint`;
  if (effective === null) return own.unreachable[0] ?? 'not known';
  return Number.isNaN(effective) ? `its unit ${member.unit?.text ?? ''} does not fit the group` : null;
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
