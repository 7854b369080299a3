import { decideOnThreshold } from '../../../method/decision/verdict.ts';
import { NO_BAND } from '../../../method/range.ts';
import { realOf, shownAt, spreadBand, spreadOf } from '../../../method/ratio/acting.ts';
import type { Channel, MeasuredLoop } from '../../model/channel.ts';
import type { Policy } from '../../model/policy.ts';
import type { EvidenceName, UnreachableReason } from '../../model/threshold.ts';
import { endsOf, isAboveFullScale, finiteOrNull, verdictOf, type Asked, type Line } from './line.ts';
import { actingLoop, isUncertain } from './spreads.ts';

/** A threshold of a channel whose current loop has its ends measured (method, sections 12 and 17). */
export function loopLine(
  by: EvidenceName,
  channel: Channel,
  loop: MeasuredLoop,
  policy: Policy,
  asked: Asked,
): Line {
  const acting = actingLoop(by, channel, loop);
  const intended = asked.multiplier * asked.setpoint;
  const effective = realOf(acting, intended);
  const spread = isUncertain(channel) ? spreadOf(acting, intended) : null;
  const interval = spread === null ? NO_BAND : spreadBand(effective, spread);
  const [low, high] = [finiteOrNull(interval.low), finiteOrNull(interval.high)];
  const reasons: UnreachableReason[] = [];
  if (isAboveFullScale(channel, asked)) reasons.push('above full scale');
  if (effective * asked.setpoint <= 0) reasons.push('on the other side of zero');
  return {
    by,
    effective: finiteOrNull(effective),
    low,
    high,
    ...verdictOf(
      decideOnThreshold(intended, effective, ...endsOf(interval, spread), policy.tolerance, policy.rule),
      reasons,
    ),
    panel: finiteOrNull(shownAt(acting, asked.setpoint, policy.rule === 'guarded')),
    spread,
    realAt: (reading) => realOf(acting, reading),
  };
}
