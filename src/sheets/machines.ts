import { summarise } from '../audit/advise/summary.ts';
import type {
  Attention,
  ChannelResult,
  GroupResult,
  MachineChance,
  Report,
  Summary,
} from '../audit/model/report.ts';
import { tagKey } from '../audit/read/tables/tagKey.ts';

/** What a report says of one machine. */
export interface Machine {
  /** As its first channel has it; empty for the channels that name no machine. */
  readonly name: string;
  /** Worst first, as in the report. */
  readonly channels: readonly ChannelResult[];
  readonly groups: readonly GroupResult[];
  /** What of it needs action, gravest first. */
  readonly attention: readonly Attention[];
  readonly summary: Summary;
}

/** The name of a machine as its sheets show it. */
export function machineName({ name }: Pick<Machine, 'name'>): string {
  return name === '' ? 'No machine named' : name;
}

/** How likely a machine is to act late and what to correct first; `undefined` where its report does not say. */
export function chanceOf({ name }: Pick<Machine, 'name'>, { machines }: Report): MachineChance | undefined {
  return machines.find(({ machine }) => tagKey(machine) === tagKey(name));
}

/**
 * The machines of a report, worst first: by the first thing that needs action, then by their worst channel. Names are compared without regard to case and white space.
 */
export function machinesOf(report: Report): readonly Machine[] {
  const channels = byMachine(report.channels, ({ machine }) => machine);
  const groups = byMachine(report.groups, ({ machine }) => machine);
  const attention = byMachine(ownedIn(report), ({ subject }) => subject.machine);
  const place = new Map(report.attention.map((entry, index) => [entry, index]));
  const first = ({ attention: [gravest] }: Machine): number =>
    gravest ? (place.get(gravest) ?? 0) : Infinity;
  const machines = [...channels].map(([key, own]): Machine => {
    const [voting, entries] = [groups.get(key) ?? [], attention.get(key) ?? []];
    return {
      name: own[0]?.machine.trim() ?? '',
      channels: own,
      groups: voting,
      attention: entries,
      summary: summarise(own, voting, [], entries),
    };
  });
  return machines.toSorted((one, other) => {
    const [a, b] = [first(one), first(other)];
    return a === b ? 0 : a - b;
  });
}

/** What needs action and belongs to no machine of the report: what was not read, faults of tables, settings without channel and machine. */
export function attentionOfNoMachine(report: Report): readonly Attention[] {
  const owned = new Set(ownedIn(report));
  return report.attention.filter((entry) => !owned.has(entry));
}

/** Entries about a channel or a group that stands in the report, or about settings without a channel that name such a machine. */
function ownedIn({ attention, channels, groups }: Report): Attention[] {
  const key = (machine: string, name: string): string => JSON.stringify([tagKey(machine), tagKey(name)]);
  const tags = new Set(channels.map(({ machine, tag }) => key(machine, tag)));
  const names = new Set(groups.map(({ machine, name }) => key(machine, name)));
  const machines = new Set(channels.map(({ machine }) => tagKey(machine)));
  return attention.filter(({ subject: { machine, tag, group } }) => {
    if (group !== null) return names.has(key(machine, group)) && machines.has(tagKey(machine));
    if (tags.has(key(machine, tag))) return true;
    return machine !== '' && tag !== '' && machines.has(tagKey(machine));
  });
}

function byMachine<T>(all: readonly T[], machineIn: (one: T) => string): Map<string, T[]> {
  const found = new Map<string, T[]>();
  for (const one of all) {
    const key = tagKey(machineIn(one));
    const own = found.get(key);
    if (own) own.push(one);
    else found.set(key, [one]);
  }
  return found;
}
