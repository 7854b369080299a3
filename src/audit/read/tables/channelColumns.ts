import { calibration } from './columns/calibration.ts';
import { correction } from './columns/correction.ts';
import { identity } from './columns/identity.ts';
import { loop } from './columns/loop.ts';
import { position } from './columns/position.ts';
import { present } from './columns/present.ts';

/** Columns of the channel list: one row a channel. */
export const channelColumns = {
  ...identity,
  ...calibration,
  ...position,
  ...loop,
  ...present,
  ...correction,
} as const;
