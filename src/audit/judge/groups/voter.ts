import { convert } from '../../../units/unit.ts';
import { convertDetection } from '../../../units/detection.ts';
import type { GroupMember } from '../../model/report.ts';
import type { MemberReason, ThresholdName, ThresholdResult } from '../../model/threshold.ts';
import type { Member } from './members.ts';

/** Which of its members' thresholds a group is judged by: the plain ones, or those while the start-up multiplier is on. */
export type Stage = 'running' | 'start-up';

/** A member's threshold at a stage: one without a multiplier of its own acts as ever while that of others is on. */
export function thresholdOf(
  { thresholds }: Member,
  name: ThresholdName,
  stage: Stage,
): ThresholdResult | undefined {
  let plain: ThresholdResult | undefined;
  for (const threshold of thresholds) {
    if (threshold.name !== name) continue;
    if (threshold.multiplier === 1) plain = threshold;
    else if (stage === 'start-up') return threshold;
  }
  return plain;
}

/** A member's seat, in the unit of the group's first member; its effective threshold is `null` where it cannot act. */
export function voterOf(member: Member, name: ThresholdName, stage: Stage, first: Member): GroupMember {
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
export function magnitude(level: number | null): number {
  return level === null ? Infinity : Math.abs(level);
}

/** The least limit of these members that have one, in the unit of the group's first member. */
export function leastLimit(members: readonly Member[], first: Member): number | null {
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
