import { tagKey } from '../read/tables/tagKey.ts';
import type { Snapshot, SnapshotChannel } from '../model/snapshot.ts';

/** Channels of a snapshot by what tags are compared by, in its order; more than one where a tag stands more than once. */
export function byTag({ channels }: Snapshot): ReadonlyMap<string, readonly SnapshotChannel[]> {
  const found = new Map<string, SnapshotChannel[]>();
  for (const channel of channels) {
    const key = tagKey(channel.tag);
    const there = found.get(key);
    if (there) there.push(channel);
    else found.set(key, [channel]);
  }
  return found;
}
