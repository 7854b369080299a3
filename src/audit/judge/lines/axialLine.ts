import { type Direction, axialVoltageAt } from '../../../method/axial/position.ts';
import { decide, decideOnThreshold } from '../../../method/decision/verdict.ts';
import { NO_BAND } from '../../../method/range.ts';
import { realOf, shownAt, spreadBand, spreadOf } from '../../../method/ratio/acting.ts';
import type { Channel } from '../../model/channel.ts';
import type { Policy } from '../../model/policy.ts';
import type { EvidenceName, UnreachableReason } from '../../model/threshold.ts';
import {
  endsOf,
  isAboveFullScale,
  finiteOrNull,
  plainSpread,
  verdictOf,
  type Asked,
  type Line,
} from './line.ts';
import { actingPosition, divisorOf, isUncertain, ofBoth } from './spreads.ts';

const bothWays: readonly Direction[] = ['toward', 'away'];

/**
 * A threshold of an axial position channel by one sensitivity: T = (S·Kc + s·(V0c − V0m))/Km (method, section 4).
 * Without both zero voltages nothing is known of where it acts, unless the ratio of the sensitivities alone makes it late.
 */
export function axialLine(by: EvidenceName, channel: Channel, policy: Policy, asked: Asked): Line {
  const { zeroConfigured, zeroMeasured } = channel;
  // Where the zeros agree the direction does not matter; where they differ nothing is known without it.
  if (zeroConfigured === null || zeroMeasured === null || lacksDirection(channel))
    return withoutZero(by, channel, policy, asked);
  const direction = channel.direction ?? 'toward';
  const intended = asked.multiplier * asked.setpoint;
  const acting = actingPosition(channel, { zeroConfigured, zeroMeasured, direction });
  const effective = realOf(acting, intended);
  const spread = isUncertain(channel) ? spreadOf(acting, intended) : null;
  const interval = spread === null ? NO_BAND : spreadBand(effective, spread);
  const [low, high] = [finiteOrNull(interval.low), finiteOrNull(interval.high)];
  const { verdict, why, reasons } = verdictOf(
    decideOnThreshold(intended, effective, ...endsOf(interval, spread), policy.tolerance, policy.rule),
    reasonsOf(channel, policy, asked, effective),
  );
  return {
    by,
    effective: finiteOrNull(effective),
    low,
    high,
    verdict,
    why,
    reasons,
    panel: finiteOrNull(shownAt(acting, asked.setpoint, policy.rule === 'guarded')),
    spread,
    realAt: (reading) => realOf(acting, reading),
  };
}

/** Whether a position is not known for want of its direction: where its zeros differ. */
export function lacksDirection({ kind, zeroConfigured, zeroMeasured, direction }: Channel): boolean {
  if (kind !== 'axial' || direction !== null) return false;
  return zeroConfigured !== null && zeroMeasured !== null && zeroConfigured !== zeroMeasured;
}

function withoutZero(by: EvidenceName, channel: Channel, policy: Policy, asked: Asked): Line {
  const { measured } = channel;
  const [configured, uncertainty] = [divisorOf(channel), ofBoth(channel)];
  const intended = asked.multiplier * asked.setpoint;
  const late = decide(configured, measured, policy.tolerance, uncertainty, policy.rule) === 'late';
  const ratio = (intended * configured) / measured;
  const ends = uncertainty === null ? null : [ratio / (1 + uncertainty), ratio / (1 - uncertainty)];
  const reasons = reasonsOf(channel, policy, asked, null);
  const [why = null] = reasons;
  return {
    by,
    effective: late ? ratio : null,
    low: late && ends ? Math.min(...ends) : null,
    high: late && ends ? Math.max(...ends) : null,
    verdict: why === null ? (late ? 'late' : 'incomplete') : 'unreachable',
    why,
    reasons,
    panel: null,
    spread: plainSpread(uncertainty),
    realAt: () => NaN,
  };
}

/**
 * Why it can't be reached; the voltage at which it acts is V0c + s·m·S·Kc = V0m + s·T·Km, which is known without the
 * measured zero, though where it acts (`effective`) then is not.
 */
function reasonsOf(
  channel: Channel,
  policy: Policy,
  asked: Asked,
  effective: number | null,
): UnreachableReason[] {
  const { near, far } = policy.linearVolts;
  const reasons: UnreachableReason[] = [];
  if (isAboveFullScale(channel, asked)) reasons.push('above full scale');
  if (effective !== null && effective * asked.setpoint <= 0) reasons.push('on the other side of zero');
  const volts = actingVolts(channel, asked);
  if (volts.some((v) => isOutside(v, near, far))) reasons.push('out of the linear reach');
  const { faultLimits } = channel;
  const [upper, lower] = [faultLimits?.near ?? Infinity, faultLimits?.far ?? -Infinity];
  if (volts.some((v) => isOutside(v, upper, lower))) reasons.push('outside the fault limits');
  return reasons;
}

/** Voltages at which a threshold acts, V: with the direction not given one for each, of which the worse counts. */
export function actingVolts(
  { zeroConfigured, direction, configured, gain, unitsPerVolt }: Channel,
  { setpoint, multiplier }: Asked,
): readonly number[] {
  if (zeroConfigured === null) return [];
  const perUnit = (1000 * divisorOf({ configured, gain })) / unitsPerVolt;
  return (direction === null ? bothWays : [direction]).map((way) =>
    axialVoltageAt(multiplier * setpoint, perUnit, zeroConfigured, way),
  );
}

function isOutside(volts: number, near: number, far: number): boolean {
  return volts > near + 1e-9 || volts < far - 1e-9;
}
