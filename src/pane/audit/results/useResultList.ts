import { useMemo, useState } from 'preact/hooks';
import type { ChannelResult, Report } from '../../../audit/model/report.ts';
import { machinesOf, type Machine } from '../../../sheets/machines.ts';
import { noFilter, type ChannelFilter } from '../channels/channelFilter.ts';
import { channelKey, listRows, machineKey, type ListRow, type MachineRow } from '../channels/listRows.ts';

/** The list of machines and channels: its lines, what is chosen in it, its filter. It keeps its place when audited again. */
export interface ResultListState {
  readonly machines: readonly Machine[];
  readonly rows: readonly ListRow[];
  /** Channels that fit the filter. */
  readonly fitting: number;
  readonly filter: ChannelFilter;
  readonly setFilter: (filter: ChannelFilter) => void;
  /** Key of the chosen line. */
  readonly chosen: string | null;
  readonly channel: ChannelResult | null;
  /** The machine that is chosen, or that of the chosen channel. */
  readonly machine: Machine | null;
  /** Chooses a line; a machine is opened, or closed where it was chosen and open. */
  readonly choose: (row: ListRow) => void;
  readonly turn: (row: MachineRow) => void;
}

/** The list that shows a report. */
export function useResultList(report: Report): ResultListState {
  const [filter, setFilter] = useState(noFilter);
  const [turned, setTurned] = useState<ReadonlyMap<string, boolean>>(new Map());
  const [wanted, setWanted] = useState<string | null>(null);
  const machines = useMemo(() => machinesOf(report), [report]);
  const list = useMemo(() => listRows(machines, filter, turned), [machines, filter, turned]);
  const channel = useMemo(
    () => report.channels.find((one) => channelKey(one) === wanted) ?? null,
    [report, wanted],
  );
  const machine =
    machines.find(({ name, channels }) =>
      channel ? channels.includes(channel) : machineKey(name) === wanted,
    ) ?? null;
  const setOpen = (key: string, open: boolean): void => {
    setTurned(new Map([...turned, [key, open]]));
  };
  return {
    machines,
    ...list,
    filter,
    setFilter,
    chosen: channel || machine ? wanted : null,
    channel,
    machine: machines.length > 1 ? machine : null,
    choose(row) {
      setWanted(row.key);
      if (row.kind === 'machine') setOpen(row.key, !(row.open && row.key === wanted));
    },
    turn({ key, open }) {
      setOpen(key, !open);
    },
  };
}
