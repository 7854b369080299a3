import type { ChannelResult } from '../../../audit/model/report.ts';
import { tagKey } from '../../../audit/read/tables/tagKey.ts';
import type { Machine } from '../../../sheets/machines.ts';
import { filterChannels, isEverything, type ChannelFilter } from './channelFilter.ts';

interface LineOfList {
  /** The same for the same machine or channel after another audit. */
  readonly key: string;
  /** Its place among its siblings, counted from 1, and how many they are. */
  readonly at: number;
  readonly of: number;
}

export interface MachineRow extends LineOfList {
  readonly kind: 'machine';
  readonly machine: Machine;
  readonly open: boolean;
}

interface ChannelRow extends LineOfList {
  readonly kind: 'channel';
  readonly channel: ChannelResult;
  /** 2 below the line of its machine. */
  readonly level: 1 | 2;
}

/** A line of the list: a machine, or a channel below it. */
export type ListRow = MachineRow | ChannelRow;

/** Lines up to which a list is shown with all its machines open. */
const small = 12;

export interface ResultList {
  readonly rows: readonly ListRow[];
  /** Channels that fit the filter, in open and closed machines. */
  readonly fitting: number;
}

/**
 * The lines of the list, worst first: machines with the channels of those that are open, or the channels alone where there is
 * one machine. A filter opens every machine that has something left. `turned`: machines that the user opened or closed.
 */
export function listRows(
  machines: readonly Machine[],
  filter: ChannelFilter,
  turned: ReadonlyMap<string, boolean>,
): ResultList {
  const left = machines
    .map((machine) => ({ machine, channels: filterChannels(machine.channels, filter) }))
    .filter(({ channels }) => channels.length > 0);
  const fitting = left.reduce((sum, { channels }) => sum + channels.length, 0);
  if (machines.length <= 1)
    return { rows: left.flatMap(({ channels }) => channelRows(channels, 1)), fitting };
  const opened = !isEverything(filter) || fitting + left.length <= small;
  const rows = left.flatMap(({ machine, channels }, index): ListRow[] => {
    const key = machineKey(machine.name);
    const open = turned.get(key) ?? opened;
    const line = { kind: 'machine', key, machine, open, at: index + 1, of: left.length } as const;
    return open ? [line, ...channelRows(channels, 2)] : [line];
  });
  return { rows, fitting };
}

function channelRows(channels: readonly ChannelResult[], level: 1 | 2): ChannelRow[] {
  return channels.map((channel, index) => ({
    kind: 'channel',
    key: channelKey(channel),
    channel,
    level,
    at: index + 1,
    of: channels.length,
  }));
}

/** What a machine is known by in the list. */
export function machineKey(name: string): string {
  return JSON.stringify(['machine', tagKey(name)]);
}

/** What a channel is known by in the list: its row in the workbook. */
export function channelKey({ tag, source: { channels } }: ChannelResult): string {
  return JSON.stringify(['channel', channels.sheet, channels.row, tag]);
}
