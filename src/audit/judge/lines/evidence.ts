import type { Channel } from '../../model/channel.ts';
import type { Obstacle } from '../../model/threshold.ts';
import type { MeasuredCurve } from './curveLine.ts';

/** All there is to judge a channel by, as it stands at one time: as found, or as left. */
export interface Evidence {
  /** With the listed sensitivity as `measured`. */
  readonly channel: Channel;
  readonly curve: MeasuredCurve | null;
  /** By a check with a known vibration: its sensitivity in the channel's unit, its uncertainty as a fraction. */
  readonly vibration: { readonly sensitivity: number; readonly uncertainty: number | null } | null;
  /** What keeps every threshold from being better than incomplete. */
  readonly obstacles: readonly Obstacle[];
}
