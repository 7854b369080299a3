import type { Channel } from '../../model/channel.ts';
import type { RecordResult } from '../../model/records.ts';
import type { ChannelRow } from '../../read/rows/channelRow.ts';
import { tagKey } from '../../read/tables/tagKey.ts';
import { auditDrift, type AuditedDrift } from '../drift/auditDrift.ts';
import type { Context } from './context.ts';

/** How the channel's sensitivity drifts, by the readings that there are of it. */
export function driftOf(
  row: ChannelRow,
  channel: Channel,
  record: RecordResult | null,
  { readings, tables, policy, today }: Context,
): AuditedDrift {
  const key = tagKey(row.tag);
  const before = readings.before.get(key) ?? [];
  const history = readings.history.byTag.get(key) ?? [];
  const known = history.length + before.length > 0;
  return auditDrift(
    {
      channel,
      row,
      table: tables.channels,
      history,
      before: before.length === 1 ? before[0] : undefined,
      record,
      asLeft: known ? row.asLeftSensitivity : null,
    },
    policy,
    today,
  );
}
