import type { Policy } from '../policy/policy.ts';
import type { ThresholdName, ThresholdResult } from '../report/types.ts';
import { axialThreshold } from './axial.ts';
import type { Channel } from './channel.ts';
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
  const multipliers = channel.multiplier > 1 ? [1, channel.multiplier] : [1];
  const evaluate = channel.kind === 'axial' ? axialThreshold : vibrationThreshold;
  return multipliers.flatMap((multiplier) =>
    inOrder.flatMap((name) => {
      const setpoint = setpointOf(channel, name);
      if (setpoint !== null) return [evaluate(channel, policy, name, setpoint, multiplier)];
      const expected = multiplier === 1 && (name === 'alert' || name === 'danger');
      return expected ? [incompleteThreshold(name, null)] : [];
    }),
  );
}

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
    unreachable: [],
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
