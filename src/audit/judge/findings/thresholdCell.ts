import type { Channel } from '../../model/channel.ts';
import type { OfSetpoint } from '../../model/rules/thresholdRules.ts';
import type { ThresholdName, ThresholdResult } from '../../model/threshold.ts';

const columns: Readonly<Record<ThresholdName, string>> = {
  alert: 'alert',
  danger: 'danger',
  'counter alert': 'counterAlert',
  'counter danger': 'counterDanger',
};

/** Id of the settings column in which a threshold stands. */
export function columnOfThreshold(name: ThresholdName): string {
  return columns[name];
}

/** The setpoint of a threshold, for a finding about it. */
export function setpointOf({ setpoint }: ThresholdResult, { unit }: Channel): OfSetpoint {
  return { setpoint: setpoint ?? NaN, unit: unit.text };
}
