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

/** A channel as an earlier audit saw it and as it is now; one of them only where it came or went. */
export interface ChannelPair {
  readonly old?: SnapshotChannel;
  readonly channel?: SnapshotChannel;
}

/**
 * Channels of one tag, those of an earlier audit with those of now: by their machines where the tag stands on several.
 * `undefined` where it can't be told which belong together.
 */
export function pairsOf(
  olds: readonly SnapshotChannel[],
  channels: readonly SnapshotChannel[],
): readonly ChannelPair[] | undefined {
  const [old, channel] = [olds[0], channels[0]];
  if (olds.length <= 1 && channels.length <= 1) return [{ ...(old && { old }), ...(channel && { channel }) }];
  if (!haveOwnMachines(olds) || !haveOwnMachines(channels)) return undefined;
  const earlier = new Map(olds.map((one) => [tagKey(one.machine), one]));
  const pairs = channels.map((one): ChannelPair => {
    const there = earlier.get(tagKey(one.machine));
    earlier.delete(tagKey(one.machine));
    return { channel: one, ...(there && { old: there }) };
  });
  return [...pairs, ...[...earlier.values()].map((one) => ({ old: one }))];
}

/** Whether each of some channels of one tag is on a machine of its own. */
export function haveOwnMachines(channels: readonly SnapshotChannel[]): boolean {
  const machines = new Set(channels.map(({ machine }) => tagKey(machine)));
  return machines.size === channels.length && !machines.has('');
}
