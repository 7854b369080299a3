import { votedThreshold } from '../../method/voting/voted.ts';
import type { Voting } from '../../method/voting/voting.ts';
import { convertDetection } from '../../units/detection.ts';
import { convert } from '../../units/convert.ts';
import type { Detection, Unit } from '../../units/parse.ts';
import type { GroupMember, GroupResult, ThresholdName } from '../report/types.ts';
import type { Member } from './members.ts';

interface Common {
  readonly unit: Unit | null;
  readonly detection: Detection | null;
}

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
): Omit<GroupResult, 'findings'> | undefined {
  const having = members.filter((member) =>
    member.thresholds.some((own) => own.name === threshold && own.setpoint !== null),
  );
  if (having.length === 0) return undefined;
  const first = having.find((member) => member.unit);
  const common: Common = { unit: first?.unit ?? null, detection: first?.detection ?? null };
  const seats = members.map((member) => seatOf(member, threshold, common));
  const effective = votedThreshold(
    seats.map((seat) => seat.magnitude),
    voting.m,
  );
  const intended = votedThreshold(
    seats.map((seat) => Math.abs(seat.setpoint ?? Infinity)),
    voting.m,
  );
  const sign = threshold.startsWith('counter') ? -1 : 1;
  const canTrip = Number.isFinite(effective);
  const limits = members.flatMap((m) => (m.limit === null ? [] : [Math.abs(inCommon(m.limit, m, common))]));
  return {
    name,
    voting: `${voting.m}oo${voting.n}`,
    threshold,
    unit: common.unit?.text ?? null,
    intended: Number.isFinite(intended) ? sign * intended : null,
    effective: canTrip ? sign * effective : null,
    canTrip,
    decidedBy: canTrip ? seats.filter((seat) => seat.magnitude === effective).map((seat) => seat.tag) : [],
    limit: limits.length > 0 ? Math.min(...limits) : null,
    members: seats.map(({ tag, setpoint, why, magnitude }) => ({
      tag,
      setpoint,
      why,
      effective: Number.isFinite(magnitude) ? sign * magnitude : null,
    })),
  };
}

interface Seat extends Omit<GroupMember, 'effective'> {
  /** Effective threshold away from zero in its own direction; infinite where the member cannot act. */
  readonly magnitude: number;
}

function seatOf(member: Member, name: ThresholdName, common: Common): Seat {
  const { tag } = member;
  const own = member.thresholds.find((threshold) => threshold.name === name);
  const setpoint = own?.setpoint ?? null;
  const shown = setpoint === null ? null : inCommon(setpoint, member, common);
  const seat = (why: string | null, magnitude = Infinity): Seat => ({ tag, setpoint: shown, why, magnitude });
  if (member.bypass) return seat('in bypass');
  if (member.notAudited !== null) return seat(member.notAudited);
  if (!own || setpoint === null) return seat(`no ${name} setpoint`);
  if (own.effective === null) return seat(own.why ?? 'cannot act');
  const magnitude = Math.abs(inCommon(own.effective, member, common));
  return Number.isNaN(magnitude)
    ? seat(`its unit ${member.unit?.text ?? ''} does not fit the group`)
    : seat(null, magnitude);
}

function inCommon(value: number, { unit, detection }: Member, common: Common): number {
  const converted = unit && common.unit ? convert(value, unit, common.unit) : value;
  return detection && common.detection ? convertDetection(converted, detection, common.detection) : converted;
}
