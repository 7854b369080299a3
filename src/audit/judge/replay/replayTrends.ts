import { columnLetters } from '../../../cells/address.ts';
import { factAt, factOf, type PlacedFact } from '../../model/findings.ts';
import type { Policy } from '../../model/policy.ts';
import type { ReplayedChannel, ReplaySource } from '../../model/replay.ts';
import type { ChannelResult } from '../../model/report.ts';
import type { NotReplayed, TrendRowFault } from '../../model/rules/replayRules.ts';
import type { TrendClock, TrendSource } from '../../model/trend.ts';
import { tagKey } from '../../read/tables/tagKey.ts';
import { dateOrderOf } from '../../read/trend/dateOrder.ts';
import { findTrendHead, type TrendHead } from '../../read/trend/trendHead.ts';
import { readTrend, type TakeReading, type TrendTrouble } from '../../read/trend/trendRows.ts';
import { replayedChannel } from './replayedChannel.ts';
import { factorBetween, offsetOf, runningOf, type Running } from './runningChannel.ts';
import { sortedReadings } from './sortedReadings.ts';

type Channel = Omit<ChannelResult, 'findings'>;

/** What came of one table of recorded readings. */
export interface TrendReplayed {
  readonly source: ReplaySource | null;
  readonly channels: readonly { readonly of: Channel; readonly result: ReplayedChannel }[];
  readonly problems: readonly PlacedFact[];
}

/**
 * Replays a table of recorded readings over the channels that it names: once through it where each channel's readings stand
 * in order of time, twice for channels whose don't.
 */
export function* replayTrend(
  source: TrendSource,
  channels: readonly Channel[],
  policy: Policy['replay'],
): Generator<void, TrendReplayed, void> {
  const head = findTrendHead(source.rows());
  if (!head) return { source: null, channels: [], problems: [] };
  const problems: PlacedFact[] = [];
  const addFinding = (column: number, row: number, fact: Parameters<typeof factAt>[1]): void => {
    problems.push(factAt({ sheet: source.name, row, column: columnLetters(column) }, fact));
  };
  const notReplayed = (values: NotReplayed, column = head.long?.tag ?? head.time): void => {
    addFinding(column, head.row, factOf('not-replayed', 'warning', values));
  };
  const clock = { zone: policy.zone, dates: policy.dates ?? dateOrderOf(source, head) };
  const zone = head.zone ?? clock.zone;
  const running = new Map<Channel, Running | null>();
  const unread = new Set<string>();
  const assumed = new Set<string>();
  const byTag = channelsByTag(channels);
  const start = (of: Channel): Running | null => {
    const known = running.get(of);
    if (known !== undefined) return known;
    const made = runningOf(of, policy, zone, notReplayed);
    running.set(of, made);
    return made;
  };
  const found = (tag: string, machine: string): Running | null => {
    const named = byTag.get(tagKey(tag)) ?? [];
    const own = machine === '' ? named : named.filter((one) => tagKey(one.machine) === tagKey(machine));
    const [only] = own;
    if (!only) unread.add(machine === '' ? tag : `${machine} ${tag}`);
    else if (own.length > 1) notReplayed({ kind: 'several machines', tag });
    return only && own.length === 1 ? start(only) : null;
  };
  const factorOf = (one: Running, unit: string | null): number | null => {
    const { unit: wanted, detection, tag } = one.of;
    if (unit === null) {
      assumed.add(tag);
      return 1;
    }
    const factor = factorBetween(unit, wanted, detection);
    if (factor === null) notReplayed({ kind: 'unit', tag, unit, wanted: wanted ?? '' });
    return factor;
  };
  const takerOf =
    (give: (one: Running, utc: number, reading: number) => void) =>
    (tag: string, machine: string, unit: string | null): TakeReading | null => {
      const one = found(tag, machine);
      const factor = one && factorOf(one, unit);
      return one === null || factor === null
        ? null
        : (utc, reading) => {
            give(one, utc, reading * factor);
          };
    };
  const inTime = takerOf((one, utc, reading) => {
    if (one.outOfOrder) return;
    if (utc < one.last) {
      one.outOfOrder = true;
      return;
    }
    one.last = utc;
    one.replay.sample(utc, reading);
  });
  const read = yield* readTrend(source, head, clock, inTime);
  const again = [...running.values()].flatMap((one) => (one?.outOfOrder === true ? [one] : []));
  if (again.length > 0) yield* replaySorted(source, head, clock, again, takerOf, policy, zone, notReplayed);
  const results = [...running.values()].flatMap((one) => {
    const record = one?.replay.end();
    if (!one || !record) return [];
    return [{ of: one.of, result: replayedChannel(one.of, one.chain, record, source.name, offsetOf(zone)) }];
  });
  for (const one of read.troubles) addFinding(one.column, one.rows[0] ?? head.row, troubleFact(one));
  if (unread.size > 0)
    addFinding(
      head.long?.tag ?? head.columns.find(({ tag }) => unread.has(tag))?.column ?? head.time,
      head.row,
      factOf('trend-columns-not-read', 'warning', { names: [...unread] }),
    );
  const taken = [...assumed];
  if (taken.length > 0)
    addFinding(
      head.long?.reading ?? head.time,
      head.row,
      factOf('trend-unit-assumed', 'note', { names: taken }),
    );
  if (results.length === 0 && problems.every(({ severity }) => severity === 'note'))
    notReplayed({ kind: 'no reading', source: source.name });
  return {
    source: {
      name: source.name,
      from: source.from,
      layout: head.long ? 'long' : 'wide',
      zone: read.usedZone ? zone : null,
      rows: read.rows,
      rowsLeftOut: read.leftOut,
      notRead: [...unread],
    },
    channels: results,
    problems: once(problems),
  };
}

/** Readings out of order that are held in memory to be sorted. */
const mostSorted = 16_000_000;

function* replaySorted(
  source: TrendSource,
  head: TrendHead,
  clock: TrendClock,
  again: readonly Running[],
  takerOf: (
    give: (one: Running, utc: number, reading: number) => void,
  ) => (tag: string, machine: string, unit: string | null) => TakeReading | null,
  policy: Policy['replay'],
  zone: string | null,
  notReplayed: (values: NotReplayed) => void,
): Generator<void, void, void> {
  let held = 0;
  for (const one of again) one.sorted = sortedReadings();
  const gather = takerOf((one, utc, reading) => {
    if (one.sorted && held < mostSorted) {
      held++;
      one.sorted.add(utc, reading);
    } else if (one.sorted) held = Infinity;
  });
  yield* readTrend(source, head, clock, gather, () => held === Infinity);
  if (held === Infinity)
    notReplayed({ kind: 'too many out of order', source: source.name, most: mostSorted });
  for (const one of again) {
    const { sorted } = one;
    one.sorted = null;
    const anew = runningOf(one.of, policy, zone, () => undefined);
    if (!anew || !sorted) continue;
    if (held !== Infinity) sorted.each(anew.replay.sample);
    Object.assign(one, { replay: anew.replay });
    yield;
  }
}

function channelsByTag(channels: readonly Channel[]): Map<string, Channel[]> {
  const found = new Map<string, Channel[]>();
  for (const channel of channels) {
    const key = tagKey(channel.tag);
    const there = found.get(key);
    if (there) there.push(channel);
    else found.set(key, [channel]);
  }
  return found;
}

function troubleFact({ fault, rows, count, text }: TrendTrouble): Parameters<typeof factAt>[1] {
  const values = { rows, count, text };
  return fault === 'no number' || fault === 'bad quality'
    ? factOf('trend-readings-unknown', 'note', { ...values, fault })
    : factOf('trend-rows-left-out', 'warning', { ...values, fault: fault satisfies TrendRowFault });
}

/** Each fact once, however often the table was gone through. */
function once(facts: readonly PlacedFact[]): PlacedFact[] {
  return [...new Map(facts.map((fact) => [JSON.stringify(fact), fact])).values()];
}
