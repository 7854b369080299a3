import { voltReach } from '../../../method/reach/voltReach.ts';
import { convertDetection } from '../../../units/detection.ts';
import type { Policy } from '../../model/policy.ts';
import type { Channel } from '../../model/channel.ts';

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
