import { groupsThatCannotTrip, summarise } from '../audit/advise/summary.ts';
import { tagKey } from '../audit/read/tables/tagKey.ts';
import type { ChannelResult, GroupResult, Report, Summary } from '../audit/model/report.ts';

/** What a report says of one machine. */
export interface Machine {
  /** As its first channel has it; empty for the channels that name no machine. */
  readonly name: string;
  /** Worst first, as in the report. */
  readonly channels: readonly ChannelResult[];
  /** Voting groups that have one of its channels. */
  readonly groups: readonly GroupResult[];
  readonly summary: Summary;
}

/** The name of a machine as its sheets show it. */
export function machineName({ name }: Machine): string {
  return name === '' ? 'No machine named' : name;
}

/**
 * The machines of a report, worst first: those with a group that cannot trip, then by their worst channel. Names are
 * compared without regard to case and white space.
 */
export function machinesOf({ channels, groups }: Report): readonly Machine[] {
  const byName = new Map<string, ChannelResult[]>();
  const byTag = new Map<string, Set<string>>();
  for (const channel of channels) {
    const key = tagKey(channel.machine);
    const own = byName.get(key);
    if (own) own.push(channel);
    else byName.set(key, [channel]);
    const tag = tagKey(channel.tag);
    byTag.set(tag, (byTag.get(tag) ?? new Set()).add(key));
  }
  const groupsOf = new Map<string, GroupResult[]>();
  for (const group of groups) {
    const keys = new Set(group.members.flatMap(({ tag }) => [...(byTag.get(tagKey(tag)) ?? [])]));
    for (const key of keys) groupsOf.set(key, [...(groupsOf.get(key) ?? []), group]);
  }
  const machines = [...byName].map(([key, own]): Machine => {
    const voting = groupsOf.get(key) ?? [];
    return {
      name: own[0]?.machine.trim() ?? '',
      channels: own,
      groups: voting,
      summary: summarise(own, voting),
    };
  });
  return machines.toSorted((one, other) => cannotTrip(other) - cannotTrip(one));
}

function cannotTrip({ groups }: Machine): number {
  return groupsThatCannotTrip(groups).length > 0 ? 1 : 0;
}
