import type { Channel } from '../../model/channel.ts';
import type { ThresholdName } from '../../model/threshold.ts';

/** The order in which the thresholds of a channel are listed. */
export const inOrder: readonly ThresholdName[] = ['alert', 'danger', 'counter alert', 'counter danger'];

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
