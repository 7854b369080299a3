import type { ThresholdName, ThresholdResult, UnreachableReason } from '../../model/threshold.ts';
import { band } from '../../../method/decision/band.ts';
import { probabilityLater } from '../../../method/decision/probabilityLater.ts';
import { decide } from '../../../method/decision/verdict.ts';
import { effectiveThreshold } from '../../../method/vibration/effective.ts';
import { indicated } from '../../../method/vibration/indicated.ts';
import { interimSetpoint } from '../../../method/vibration/interimSetpoint.ts';
import { shift } from '../../../method/vibration/shift.ts';
import { shiftFraction } from '../../../method/vibration/shiftFraction.ts';
import type { Policy } from '../../model/policy.ts';
import type { Channel } from '../../model/channel.ts';
import { exceeds } from './exceeds.ts';
import { linearReachOf } from './reach.ts';
import { timing } from './timing.ts';
import { zonesOf } from './zones.ts';

/** A threshold of a vibration or loop channel: sections on thresholds, uncertainty, reach, time and zones of the method. */
export function vibrationThreshold(
  channel: Channel,
  policy: Policy,
  name: ThresholdName,
  setpoint: number,
  multiplier: number,
): ThresholdResult {
  const { configured, measured, uncertainty, coverage, limit } = channel;
  const intended = multiplier * setpoint;
  const effective = effectiveThreshold(setpoint, configured, measured, multiplier);
  const interval =
    uncertainty === null ? null : band(setpoint, configured, measured, uncertainty, multiplier);
  const unreachable = reasons(channel, policy, intended, effective);
  const zones = zonesOf(channel, intended, effective);
  const times = timing(channel, name, intended, effective);
  const interim = interimSetpoint(setpoint, configured, measured, channel.resolution);
  return {
    name,
    setpoint,
    multiplier,
    effective,
    low: interval?.low ?? null,
    high: interval?.high ?? null,
    shift: shift(setpoint, configured, measured, multiplier),
    shiftFraction: shiftFraction(configured, measured),
    verdict:
      unreachable.length > 0
        ? 'unreachable'
        : decide(configured, measured, policy.tolerance, uncertainty, policy.rule),
    unreachable,
    indicatedAtSetpoint: indicated(setpoint, configured, measured),
    interimSetpoint: interim > 0 ? interim : null,
    probabilityBeyondLimit:
      name === 'danger' && limit !== null && uncertainty !== null
        ? probabilityLater(setpoint, limit, configured, measured, uncertainty, coverage, multiplier)
        : null,
    zone: zones.zone,
    intendedZone: zones.intendedZone,
    daysLate: times.daysLate,
    daysToGo: times.daysToGo,
    levelAtTrip: times.levelAtTrip,
    headroom: times.headroom,
  };
}

function reasons(channel: Channel, policy: Policy, intended: number, effective: number): UnreachableReason[] {
  const found: UnreachableReason[] = [];
  if (channel.fullScale !== null && exceeds(intended, channel.fullScale)) found.push('above full scale');
  const reach = linearReachOf(channel, policy);
  if (reach !== null && exceeds(effective, reach)) found.push('out of the linear reach');
  return found;
}
