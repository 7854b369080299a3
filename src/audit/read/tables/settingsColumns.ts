import { identity } from './columns/identity.ts';
import { monitor } from './columns/monitor.ts';
import { setpoints } from './columns/setpoints.ts';

/** Columns of the monitor settings: one row a channel. */
export const settingsColumns = { tag: identity.tag, ...setpoints, ...monitor } as const;
