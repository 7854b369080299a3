import type { Attention, AttentionSubject, ChannelResult, GroupResult } from '../../../audit/model/report.ts';

/** What needs action of each channel and of each threshold of a group, in the order of the whole list. */
export interface BySubject {
  readonly ofChannel: (channel: ChannelResult) => readonly Attention[];
  readonly ofGroup: (group: GroupResult) => readonly Attention[];
  /** Place of the first entry of a group's threshold in the whole list; those that need nothing come last. */
  readonly placeOfGroup: (group: GroupResult) => number;
}

/** The list of what needs action by what it is about. */
export function bySubject(attention: readonly Attention[]): BySubject {
  const byKey = new Map<string, { readonly at: number; readonly entries: Attention[] }>();
  for (const [at, entry] of attention.entries()) {
    const key = keyOf(entry.subject);
    const known = byKey.get(key);
    if (known) known.entries.push(entry);
    else byKey.set(key, { at, entries: [entry] });
  }
  return {
    ofChannel: ({ machine, tag }) => byKey.get(channelKey(machine, tag))?.entries ?? [],
    ofGroup: (group) => byKey.get(groupKey(group))?.entries ?? [],
    placeOfGroup: (group) => byKey.get(groupKey(group))?.at ?? attention.length,
  };
}

function keyOf({ machine, tag, group, threshold, multiplier }: AttentionSubject): string {
  return group === null
    ? channelKey(machine, tag)
    : groupKey({ machine, name: group, threshold, multiplier: multiplier ?? 1 });
}

function channelKey(machine: string, tag: string): string {
  return JSON.stringify([machine, tag]);
}

function groupKey({
  machine,
  name,
  threshold,
  multiplier,
}: Pick<GroupResult, 'machine' | 'name' | 'multiplier'> & Pick<AttentionSubject, 'threshold'>): string {
  return JSON.stringify([machine, name, threshold, multiplier]);
}
