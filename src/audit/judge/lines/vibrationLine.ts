import { band } from '../../../method/decision/band.ts';
import { decide } from '../../../method/decision/verdict.ts';
import { voltReach } from '../../../method/reach.ts';
import { actual, panelLevel } from '../../../method/vibration/panelReading.ts';
import { effectiveThreshold } from '../../../method/vibration/threshold.ts';
import { convertDetection } from '../../../units/detection.ts';
import type { Channel } from '../../model/channel.ts';
import type { Policy } from '../../model/policy.ts';
import type { EvidenceName, UnreachableReason } from '../../model/threshold.ts';
import {
  counted,
  exceeds,
  isAboveFullScale,
  finiteOrNull,
  plainSpread,
  verdictOf,
  type Asked,
  type Line,
} from './line.ts';
import { loopLine } from './loopLine.ts';
import { divisorOf, ofBoth } from './spreads.ts';

/**
 * A threshold of a vibration or loop channel by one sensitivity, the listed one or that of a check with a known
 * vibration, which stands in `channel.measured`: T = m·S·Kc/Km (method, sections 2, 3 and 7).
 */
export function vibrationLine(by: EvidenceName, channel: Channel, policy: Policy, asked: Asked): Line {
  const { measured, loop } = channel;
  if (loop !== null) return loopLine(by, channel, loop, policy, asked);
  const [configured, uncertainty] = [divisorOf(channel), ofBoth(channel)];
  const { setpoint, multiplier } = asked;
  const effective = effectiveThreshold(setpoint, configured, measured, multiplier);
  const interval =
    uncertainty === null ? null : band(setpoint, configured, measured, uncertainty, multiplier);
  const reasons: UnreachableReason[] = [];
  if (isAboveFullScale(channel, asked)) reasons.push('above full scale');
  const reach = linearReachOf(channel, policy);
  if (reach !== null && exceeds(effective, reach)) reasons.push('out of the linear reach');
  const { verdict, why } = verdictOf(
    decide(configured, measured, policy.tolerance, uncertainty, policy.rule),
    reasons,
  );
  return {
    by,
    effective: finiteOrNull(effective),
    low: interval && finiteOrNull(interval.low),
    high: interval && finiteOrNull(interval.high),
    verdict,
    why,
    reasons,
    panel: finiteOrNull(panelLevel(setpoint, configured, measured, counted(uncertainty, policy), 1)),
    spread: plainSpread(uncertainty),
    realAt: (reading) => actual(reading, configured, measured),
  };
}

/**
 * The largest swing that a radial channel's chain can follow from its present gap, in the channel's unit and detection,
 * from the straight part of its calibration record, or without one judged in volts from the policy's linear span; `null`
 * for other kinds and where the gap voltage is not known.
 */
export function linearReachOf(channel: Channel, policy: Policy): number | null {
  const { kind, gapVoltage, measured, unitsPerVolt, detection, recordReach } = channel;
  if (kind !== 'radial' || gapVoltage === null || detection === null) return null;
  if (recordReach !== null) return convertDetection(recordReach, 'p-p', detection);
  const { near, far } = policy.linearVolts;
  return convertDetection(
    voltReach(gapVoltage, near, far, (1000 * measured) / unitsPerVolt),
    'p-p',
    detection,
  );
}
