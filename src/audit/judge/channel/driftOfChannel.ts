import type { Channel } from '../../model/channel.ts';
import type { RecordResult } from '../../model/records.ts';
import type { SnapshotChannel } from '../../model/snapshot.ts';
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
      before: earlierOf(row, before, tables.channels.origin?.key(row.row) ?? key),
      record,
      asLeft: known ? row.asLeftSensitivity : null,
    },
    policy,
    today,
  );
}

/** The channel in an earlier audit: the only one of its tag; where that stands on several machines, the one of its machine. */
function earlierOf(
  { tag, machine }: ChannelRow,
  before: readonly SnapshotChannel[],
  key: string,
): SnapshotChannel | undefined {
  if (before.length === 1 && key === tagKey(tag)) return before[0];
  if (machine === '') return undefined;
  const own = before.filter((one) => tagKey(one.machine) === tagKey(machine));
  return own.length === 1 ? own[0] : undefined;
}
