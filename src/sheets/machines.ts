import { summarise } from '../audit/advise/summary.ts';
import { tagKey } from '../audit/read/tables/tagKey.ts';
import type { Attention, ChannelResult, GroupResult, Report, Summary } from '../audit/model/report.ts';

/** What a report says of one machine. */
export interface Machine {
  /** As its first channel has it; empty for the channels that name no machine. */
  readonly name: string;
  /** Worst first, as in the report. */
  readonly channels: readonly ChannelResult[];
  /** Its voting groups. */
  readonly groups: readonly GroupResult[];
  /** What needs action of it, gravest first, as in the report. */
  readonly attention: readonly Attention[];
  readonly summary: Summary;
}

/** The name of a machine as its sheets show it. */
export function machineName({ name }: Pick<Machine, 'name'>): string {
  return name === '' ? 'No machine named' : name;
}

/**
 * The machines of a report that have channels, in the order in which the list of what needs action names them; those that it
 * does not name come last, as the report lists their channels. Names are compared without regard to case and white space.
 */
export function machinesOf({ channels, groups, attention }: Report): readonly Machine[] {
  const byName = new Map<string, ChannelResult[]>();
  for (const channel of channels) entry(byName, tagKey(channel.machine)).push(channel);
  const groupsOf = new Map<string, GroupResult[]>();
  for (const group of groups) entry(groupsOf, tagKey(group.machine)).push(group);
  const attentionOf = new Map<string, Attention[]>();
  for (const one of attention) {
    const { machine, tag, group } = one.subject;
    if (machine !== '' || tag !== '' || group !== null) entry(attentionOf, tagKey(machine)).push(one);
  }
  const machines = [...byName].map(([key, own]): Machine => {
    const voting = groupsOf.get(key) ?? [];
    const action = attentionOf.get(key) ?? [];
    return {
      name: own[0]?.machine.trim() ?? '',
      channels: own,
      groups: voting,
      attention: action,
      summary: summarise(own, voting, [], action),
    };
  });
  const named = [...attentionOf.keys()];
  const place = new Map(named.map((key, at) => [key, at]));
  const placeOf = ({ name }: Machine): number => place.get(tagKey(name)) ?? named.length;
  return machines.toSorted((one, other) => placeOf(one) - placeOf(other));
}

function entry<T>(map: Map<string, T[]>, key: string): T[] {
  const there = map.get(key);
  if (there) return there;
  const made: T[] = [];
  map.set(key, made);
  return made;
}
