import type { ThresholdName, ThresholdResult, UnreachableReason } from '../../model/threshold.ts';
import type { Policy } from '../../model/policy.ts';
import { axialThreshold } from './axial.ts';
import type { Channel } from '../../model/channel.ts';
import { vibrationThreshold } from './vibration.ts';

const inOrder: readonly ThresholdName[] = ['alert', 'danger', 'counter alert', 'counter danger'];

/** The setpoint of a threshold in the channel's unit; `null` where there is none. */
export function setpointOf(channel: Channel, name: ThresholdName): number | null {
  switch (name) {
    case 'alert':
      return channel.alert;
    case 'danger':
      return channel.danger;
    case 'counter alert':
      return channel.counterAlert;
    case 'counter danger':
      return channel.counterDanger;
  }
}

/**
 * Every threshold of a channel: alert and danger, the counter-direction ones that are given, and, where the set-point
 * multiplier is above 1, each of them once more with it.
 */
export function evaluateThresholds(channel: Channel, policy: Policy): ThresholdResult[] {
  const evaluate = channel.kind === 'axial' ? axialThreshold : vibrationThreshold;
  const found: ThresholdResult[] = [];
  for (const name of inOrder) {
    const setpoint = setpointOf(channel, name);
    if (setpoint !== null) found.push(evaluate(channel, policy, name, setpoint, 1));
    else if (name === 'alert' || name === 'danger') found.push(incompleteThreshold(name, null));
  }
  if (channel.multiplier <= 1) return found;
  for (const name of inOrder) {
    const setpoint = setpointOf(channel, name);
    if (setpoint !== null) found.push(evaluate(channel, policy, name, setpoint, channel.multiplier));
  }
  return found;
}

/** The reasons of a threshold that can be reached: none. */
export const reachable: readonly UnreachableReason[] = [];

/** A threshold of which nothing can be worked out. */
export function incompleteThreshold(name: ThresholdName, setpoint: number | null): ThresholdResult {
  return {
    name,
    setpoint,
    multiplier: 1,
    effective: null,
    low: null,
    high: null,
    shift: null,
    shiftFraction: null,
    verdict: 'incomplete',
    unreachable: reachable,
    indicatedAtSetpoint: null,
    interimSetpoint: null,
    probabilityBeyondLimit: null,
    zone: null,
    intendedZone: null,
    daysLate: null,
    daysToGo: null,
    levelAtTrip: null,
    headroom: null,
  };
}
