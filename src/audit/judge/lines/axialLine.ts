import { type Direction, axialVoltageAt, axialActual } from '../../../method/axial/position.ts';
import { axialEffective, axialBand, axialPanelLevel } from '../../../method/axial/threshold.ts';
import { decide, decideOnThreshold } from '../../../method/decision/verdict.ts';
import { NO_BAND } from '../../../method/range.ts';
import type { Channel } from '../../model/channel.ts';
import type { Policy } from '../../model/policy.ts';
import type { EvidenceName, UnreachableReason } from '../../model/threshold.ts';
import { counted, isAboveFullScale, known, verdictOf, type Asked, type Line } from './line.ts';

const bothWays: readonly Direction[] = ['toward', 'away'];

/**
 * A threshold of an axial position channel by one sensitivity: T = (S·Kc + s·(V0c − V0m))/Km (method, section 4).
 * Without both zero voltages nothing is known of where it acts, unless the ratio of the sensitivities alone makes it late.
 */
export function axialLine(by: EvidenceName, channel: Channel, policy: Policy, asked: Asked): Line {
  const { zeroConfigured, zeroMeasured, unitsPerVolt } = channel;
  // Where the zeros agree the direction does not matter; where they differ nothing is known without it.
  if (zeroConfigured === null || zeroMeasured === null || lacksDirection(channel))
    return withoutZero(by, channel, policy, asked);
  const { uncertainty } = channel;
  const perUnit = 1000 / unitsPerVolt;
  const [kc, km] = [channel.configured * perUnit, channel.measured * perUnit];
  const direction = channel.direction ?? 'toward';
  const intended = asked.multiplier * asked.setpoint;
  const zeros = [zeroConfigured, zeroMeasured, direction] as const;
  const effective = axialEffective(intended, kc, km, ...zeros);
  const interval = uncertainty === null ? NO_BAND : axialBand(intended, kc, km, ...zeros, uncertainty);
  const [low, high] = [known(interval.low), known(interval.high)];
  return {
    by,
    effective: known(effective),
    low,
    high,
    ...verdictOf(
      decideOnThreshold(intended, effective, low, high, policy.tolerance, policy.rule),
      reasonsOf(channel, policy, asked, effective),
    ),
    panel: known(axialPanelLevel(asked.setpoint, kc, km, ...zeros, counted(uncertainty, policy))),
    uncertainty,
    realAt: (reading) => axialActual(reading, kc, km, ...zeros),
  };
}

/** Whether a position is not known for want of its direction: where its zeros differ. */
export function lacksDirection({ kind, zeroConfigured, zeroMeasured, direction }: Channel): boolean {
  if (kind !== 'axial' || direction !== null) return false;
  return zeroConfigured !== null && zeroMeasured !== null && zeroConfigured !== zeroMeasured;
}

function withoutZero(by: EvidenceName, channel: Channel, policy: Policy, asked: Asked): Line {
  const { configured, measured, uncertainty } = channel;
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
    uncertainty,
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
  { zeroConfigured, direction, configured, unitsPerVolt }: Channel,
  { setpoint, multiplier }: Asked,
): readonly number[] {
  if (zeroConfigured === null) return [];
  const perUnit = (1000 * configured) / unitsPerVolt;
  return (direction === null ? bothWays : [direction]).map((way) =>
    axialVoltageAt(multiplier * setpoint, perUnit, zeroConfigured, way),
  );
}

function isOutside(volts: number, near: number, far: number): boolean {
  return volts > near + 1e-9 || volts < far - 1e-9;
}
