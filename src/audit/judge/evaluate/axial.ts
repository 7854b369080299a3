import { axialBand } from '../../../method/axial/band.ts';
import type { Direction } from '../../../method/axial/direction.ts';
import { axialEffective } from '../../../method/axial/effective.ts';
import { axialIndicated } from '../../../method/axial/indicated.ts';
import { axialInterim } from '../../../method/axial/interim.ts';
import { axialVoltageAt } from '../../../method/axial/voltageAt.ts';
import { probabilityLaterOf } from '../../../method/decision/probabilityLater.ts';
import { decideOnThreshold } from '../../../method/decision/verdict.ts';
import type { Policy } from '../../model/policy.ts';
import type { Channel } from '../../model/channel.ts';
import { exceeds } from './exceeds.ts';
import { timing } from './timing.ts';
import {
  trips,
  type ThresholdName,
  type ThresholdResult,
  type UnreachableReason,
} from '../../model/threshold.ts';

interface Zeros {
  readonly configured: number;
  readonly measured: number;
  readonly direction: Direction;
}

/** The zero voltages, where both are known; else no zero shift, which is the plain ratio of the sensitivities. */
function zerosOf({ zeroConfigured, zeroMeasured, direction }: Channel): Zeros {
  const known = zeroConfigured !== null && zeroMeasured !== null;
  return {
    configured: known ? zeroConfigured : 0,
    measured: known ? zeroMeasured : 0,
    direction: direction ?? 'toward',
  };
}

/** A threshold of an axial position channel; `setpoint` is signed, and so is where it acts. */
export function axialThreshold(
  channel: Channel,
  policy: Policy,
  name: ThresholdName,
  setpoint: number,
  multiplier: number,
): ThresholdResult {
  const { uncertainty, coverage, limit, resolution, unitsPerVolt } = channel;
  const zeros = zerosOf(channel);
  const perUnit = 1000 / unitsPerVolt;
  const [kc, km] = [channel.configured * perUnit, channel.measured * perUnit];
  const sign = Math.sign(setpoint);
  const intended = multiplier * setpoint;
  const effective = axialEffective(intended, kc, km, zeros.configured, zeros.measured, zeros.direction);
  const interval =
    uncertainty === null
      ? null
      : axialBand(intended, kc, km, zeros.configured, zeros.measured, zeros.direction, uncertainty);
  const unreachable = reasons(channel, policy, intended, effective);
  const interim = axialInterim(
    setpoint,
    kc,
    km,
    zeros.configured,
    zeros.measured,
    zeros.direction,
    resolution,
  );
  const times = timing(channel, name, intended, effective);
  const late = sign * (effective - intended) + 0;
  return {
    name,
    setpoint,
    multiplier,
    effective,
    low: interval?.low ?? null,
    high: interval?.high ?? null,
    shift: late,
    shiftFraction: late / Math.abs(intended),
    verdict:
      unreachable.length > 0
        ? 'unreachable'
        : decideOnThreshold(
            intended,
            effective,
            interval?.low ?? null,
            interval?.high ?? null,
            policy.tolerance,
            policy.rule,
          ),
    unreachable,
    indicatedAtSetpoint: axialIndicated(setpoint, kc, km, zeros.configured, zeros.measured, zeros.direction),
    interimSetpoint: Math.abs(interim) > 0 ? interim : null,
    probabilityBeyondLimit:
      trips(name) && limit !== null && uncertainty !== null
        ? probabilityLaterOf(
            Math.abs(effective) * channel.measured,
            limit,
            channel.measured,
            uncertainty,
            coverage,
          )
        : null,
    zone: null,
    intendedZone: null,
    daysLate: times.daysLate,
    daysToGo: times.daysToGo,
    levelAtTrip: times.levelAtTrip,
    headroom: times.headroom,
  };
}

function reasons(channel: Channel, policy: Policy, intended: number, effective: number): UnreachableReason[] {
  const { fullScale, zeroConfigured, direction, configured, unitsPerVolt } = channel;
  const found: UnreachableReason[] = [];
  if (fullScale !== null && exceeds(Math.abs(intended), fullScale)) found.push('above full scale');
  if (effective * intended <= 0) found.push('on the other side of zero');
  if (zeroConfigured !== null && direction !== null) {
    const volts = axialVoltageAt(intended, (1000 * configured) / unitsPerVolt, zeroConfigured, direction);
    const { near, far } = policy.linearVolts;
    if (exceeds(volts - far, near - far) || volts < far - 1e-9) found.push('out of the linear reach');
  }
  return found;
}
