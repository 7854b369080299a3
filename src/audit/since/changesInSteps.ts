import { byTag, haveOwnMachines, pairsOf, type ChannelPair } from './byTag.ts';
import { earlierRemarks } from './earlierRemarks.ts';
import { changeKinds, type Change, type ChangeKind, type SinceResult } from '../model/since.ts';
import type { Snapshot, SnapshotChannel, Quantity, SnapshotThreshold } from '../model/snapshot.ts';
import { valueChanges } from './valueChanges.ts';
import { verdictClauses, thresholdMessage } from './thresholdMessage.ts';
import { trips, type ThresholdVerdict } from '../model/threshold.ts';
import { inUnitOf } from '../model/sameValue.ts';

/** Channels that are compared in one step. */
const stride = 250;

/**
 * What changed from one audit to another, worst first: verdicts, settings, sensitivities, channels that are gone or new,
 * and what is still not within tolerance. Channels are joined by tag, and by machine where a tag stands on several. Values are
 * compared in common units, to nine digits. Goes step by step, so that a screen can stay alive.
 */
export function* changesInSteps(before: Snapshot, now: Snapshot): Generator<void, SinceResult, void> {
  const [earlier, later] = [byTag(before), byTag(now)];
  const unknown = new Set(before.unknown);
  const changes: Change[] = [];
  let done = 0;
  for (const [key, channels] of later) {
    if (++done % stride === 0) yield;
    const olds = earlier.get(key) ?? [];
    const [channel] = channels;
    const pairs = pairsOf(olds, channels);
    if (pairs) for (const pair of pairs) changes.push(...between(pair, unknown));
    else if (channel) changes.push(severalTimes(channel, channels, olds));
  }
  for (const [key, olds] of earlier)
    if (!later.has(key))
      for (const old of haveOwnMachines(olds) ? olds : olds.slice(0, 1)) changes.push(lone(old, 'gone'));
  const { input, from, sheet, audited, channels } = before;
  return {
    before: { input, from, sheet, audited, channels: channels.length },
    counts: countsOf(changes),
    changes: inOrder(changes),
    remarks: [...before.remarks, ...earlierRemarks(before, now)],
  };
}

function between({ old, channel }: ChannelPair, unknown: ReadonlySet<Quantity>): Change[] {
  if (!channel) return old ? [lone(old, 'gone')] : [];
  if (!old) return [...verdictChanges(undefined, channel, []), lone(channel, 'new')];
  const values = valueChanges(old, channel, unknown);
  return [...verdictChanges(old, channel, values), ...values];
}

function inOrder(changes: readonly Change[]): Change[] {
  const place = new Map(changeKinds.map((kind, index) => [kind, index]));
  return changes.toSorted(
    (one, other) => (place.get(one.kind) ?? 0) - (place.get(other.kind) ?? 0) || rankOf(one) - rankOf(other),
  );
}

/** A danger trips, an alert does not. */
function rankOf({ threshold }: Change): number {
  return threshold && !trips(threshold) ? 1 : 0;
}

function countsOf(changes: readonly Change[]): Record<ChangeKind, number> {
  const counts = Object.fromEntries(changeKinds.map((kind) => [kind, 0])) as Record<ChangeKind, number>;
  for (const { kind } of changes) counts[kind]++;
  return counts;
}

function lone(channel: SnapshotChannel, kind: 'gone' | 'new'): Change {
  const message =
    kind === 'gone'
      ? `The channel is no longer in the channel list; it ${verdictClauses[channel.verdict].before}. Find out whether it was taken out of service or renamed.`
      : `The channel was not in the earlier audit; it ${verdictClauses[channel.verdict].now}.`;
  return {
    ...about(channel, kind, message),
    verdictBefore: kind === 'gone' ? channel.verdict : null,
    verdictNow: kind === 'new' ? channel.verdict : null,
  };
}

function severalTimes(
  channel: SnapshotChannel,
  now: readonly SnapshotChannel[],
  before: readonly SnapshotChannel[],
): Change {
  const where = (channels: readonly SnapshotChannel[]) =>
    `in rows ${channels.map(({ source }) => source.row).join(', ')} of sheet '${channels[0]?.source.sheet ?? ''}'`;
  const said = [
    ...(now.length > 1 ? [`${where(now)} now`] : []),
    ...(before.length > 1 ? [`${where(before)} before`] : []),
  ];
  const message = `The tag stands more than once, ${said.join(' and ')}, so it can’t be told which rows belong together. Give each channel a tag of its own.`;
  return about(channel, 'not compared', message);
}

function about(
  { tag, machine, location, source }: SnapshotChannel,
  kind: ChangeKind,
  message: string,
): Change {
  return {
    kind,
    tag,
    machine,
    location,
    threshold: null,
    multiplier: null,
    quantity: null,
    before: null,
    now: null,
    unit: null,
    verdictBefore: null,
    verdictNow: null,
    message,
    source,
  };
}

/**
 * Thresholds of a channel whose verdict is another than before, and those that are still not within tolerance. `before`
 * is `undefined` for a channel that the earlier audit had not. `causes` are the changes of its settings and readings.
 */
function verdictChanges(
  before: SnapshotChannel | undefined,
  now: SnapshotChannel,
  causes: readonly Change[],
): Change[] {
  return now.thresholds.flatMap((threshold) => {
    const earlier = before?.thresholds.find(
      ({ name, multiplier }) => name === threshold.name && multiplier === threshold.multiplier,
    );
    const kind = kindOf(earlier?.verdict, threshold.verdict);
    if (kind === undefined) return [];
    const was = before && earlier ? effectiveIn(before, earlier, now) : null;
    return [
      {
        kind,
        tag: now.tag,
        machine: now.machine,
        location: now.location,
        threshold: threshold.name,
        multiplier: threshold.multiplier,
        quantity: null,
        before: was,
        now: threshold.effective,
        unit: now.unit,
        verdictBefore: earlier?.verdict ?? null,
        verdictNow: threshold.verdict,
        message: thresholdMessage({ before, earlier, was, now, threshold, causes }),
        source: now.source,
      },
    ];
  });
}

function kindOf(before: ThresholdVerdict | undefined, now: ThresholdVerdict): ChangeKind | undefined {
  if (now === 'within') {
    if (before === undefined || before === 'within') return undefined;
    return before === 'incomplete' ? 'completed' : 'cured';
  }
  return before === now ? `still ${now}` : `newly ${now}`;
}

/** Where a threshold acted, in the unit and detection that the channel has now; `null` where that can't be told. */
function effectiveIn(
  before: SnapshotChannel,
  { effective }: SnapshotThreshold,
  now: SnapshotChannel,
): number | null {
  if (effective === null || before.unit === null || now.unit === null) return null;
  const own = { amount: effective, unit: before.unit, detection: before.detection };
  return inUnitOf(own, { unit: now.unit, detection: now.detection });
}
