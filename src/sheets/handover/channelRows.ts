import { tagKey } from '../../audit/read/tables/tagKey.ts';
import type { Attention, ChannelResult } from '../../audit/model/report.ts';
import type { ThresholdName, ThresholdResult } from '../../audit/model/threshold.ts';
import type { Machine } from '../machines.ts';

/** An alert and a danger of a channel that belong together, and what of them needs action, gravest first. */
export interface ChannelRow {
  readonly channel: ChannelResult;
  readonly alert: ThresholdResult | null;
  readonly danger: ThresholdResult | null;
  readonly counter: boolean;
  readonly multiplier: number;
  readonly entries: readonly Attention[];
}

/** What of a machine needs action about a channel, gravest first. */
export function entriesOf({ attention }: Machine, { tag }: ChannelResult): readonly Attention[] {
  return attention.filter(({ subject }) => subject.group === null && tagKey(subject.tag) === tagKey(tag));
}

/** What of a machine needs action about settings whose channel is not in the list, one entry each. */
export function unlistedIn({ attention, channels }: Machine): readonly Attention[] {
  const listed = new Set(channels.map(({ tag }) => tagKey(tag)));
  return attention.filter(
    ({ code, subject: { tag } }) => code === 'incomplete' && tag !== '' && !listed.has(tagKey(tag)),
  );
}

/** Whether an entry says that a channel is not OK; a remark that is no more than a warning leaves it OK, to be checked. */
export function isFault({ code, severity }: Attention): boolean {
  return code !== 'finding' || severity === 'critical';
}

/**
 * The channels of a machine that are not OK, worst first, a row for each direction and for start-up where that is what is
 * wrong with them.
 */
export function faultRows(machine: Machine): readonly ChannelRow[] {
  const place = new Map(machine.attention.map((entry, index) => [entry, index]));
  const first = ({ entries: [gravest] }: ChannelRow): number =>
    gravest ? (place.get(gravest) ?? 0) : Infinity;
  return machine.channels
    .flatMap((channel) => rowsOf(channel, entriesOf(machine, channel).filter(isFault)))
    .toSorted((one, other) => first(one) - first(other));
}

/** The plain alert and danger of a channel. */
export function plainRow(channel: ChannelResult, entries: readonly Attention[] = []): ChannelRow {
  return rowOf(channel, false, 1, entries);
}

function rowsOf(channel: ChannelResult, entries: readonly Attention[]): ChannelRow[] {
  const ways = channel.thresholds.some(({ name }) => isCounter(name)) ? [false, true] : [false];
  const rows = new Map<string, ChannelRow>();
  for (const entry of entries) {
    const { threshold, multiplier } = entry.subject;
    // What is about no threshold in particular, such as a bypass, is about both directions.
    for (const counter of threshold === null ? ways : [isCounter(threshold)]) {
      const key = JSON.stringify([counter, multiplier ?? 1]);
      const own = rows.get(key) ?? rowOf(channel, counter, multiplier ?? 1, []);
      rows.set(key, { ...own, entries: [...own.entries, entry] });
    }
  }
  return [...rows.values()];
}

function rowOf(
  channel: ChannelResult,
  counter: boolean,
  multiplier: number,
  entries: readonly Attention[],
): ChannelRow {
  const named = (name: ThresholdName): ThresholdResult | null =>
    channel.thresholds.find((one) => one.name === name && one.multiplier === multiplier) ?? null;
  return {
    channel,
    alert: named(counter ? 'counter alert' : 'alert'),
    danger: named(counter ? 'counter danger' : 'danger'),
    counter,
    multiplier,
    entries,
  };
}

function isCounter(threshold: ThresholdName | null): boolean {
  return threshold === 'counter alert' || threshold === 'counter danger';
}
