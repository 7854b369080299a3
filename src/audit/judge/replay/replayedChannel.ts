import type { Moment, ReplayedChannel, ReplayedThreshold } from '../../model/replay.ts';
import type { ChannelResult } from '../../model/report.ts';
import type { ChainOverTime } from './chain.ts';
import type { ChannelRecord, WatchedResult } from './channelReplay.ts';

/** A channel's record as the report shows it; `offsetAt`: of the clock by which times are told, ms. */
export function replayedChannel(
  { tag, machine, unit, sensitivity }: Omit<ChannelResult, 'findings'>,
  { first, later }: ChainOverTime,
  { origin, correctedAt, last, readings, unknown, interval, maxGap, thresholds, timeline }: ChannelRecord,
  source: string,
  offsetAt: (utc: number) => number,
): ReplayedChannel {
  const timeAt = (utc: number): string => isoTime(utc, offsetAt);
  const moment = (seconds: number): Moment | null =>
    Number.isNaN(seconds) ? null : { seconds, time: timeAt(origin + 1000 * seconds) };
  const shortest = thresholds.reduce((least, { delay }) => Math.min(least, delay), Infinity);
  const isLater = later !== null && origin >= correctedAt;
  const isSplit = later !== null && !isLater && last >= correctedAt;
  const chainAt = (utc: number): typeof first => (later && utc >= correctedAt ? later.chain : first);
  return {
    tag,
    machine,
    source,
    unit: unit ?? '',
    configured: sensitivity.configured ?? NaN,
    measured: (isLater || isSplit ? later.chain : first).measured,
    sensitivityUnit: sensitivity.unit ?? '',
    corrected: isSplit ? { from: timeAt(correctedAt), before: first.measured } : null,
    readings,
    unknown,
    first: timeAt(origin),
    last: timeAt(last),
    interval,
    maxGap,
    shortNotSeen: interval !== null && interval > shortest,
    thresholds: thresholds.map((threshold) => resultOf(threshold, moment)),
    timeline: timeline.map(({ time, reading }) => ({
      seconds: time,
      time: timeAt(origin + 1000 * time),
      shown: Number.isNaN(reading) ? null : reading,
      real: Number.isNaN(reading) ? null : chainAt(origin + 1000 * time).realAt(reading),
    })),
  };
}

function resultOf(
  { name, setpoint, delay, shouldActAt, fromStart, outcome, replayed }: WatchedResult,
  moment: (seconds: number) => Moment | null,
): ReplayedThreshold {
  const { acts, should, late } = replayed;
  return {
    name,
    setpoint,
    shouldActAt,
    delay,
    acted: { proven: moment(acts.proven), earliest: moment(acts.earliest) },
    should: { proven: moment(should.proven), earliest: moment(should.earliest) },
    late: Number.isNaN(late) ? null : late,
    fromStart,
    outcome,
  };
}

/** A moment as ISO 8601 with the offset that the clock has then: `2026-11-29T23:48:20.000+01:00`; UTC as `Z`. */
function isoTime(utc: number, offsetAt: (utc: number) => number): string {
  const rounded = Math.round(utc);
  const offset = offsetAt(rounded);
  const local = new Date(rounded + offset).toISOString();
  if (offset === 0) return local;
  const minutes = Math.round(Math.abs(offset) / 60_000);
  const two = (value: number): string => String(value).padStart(2, '0');
  return `${local.slice(0, -1)}${offset < 0 ? '-' : '+'}${two(Math.floor(minutes / 60))}:${two(minutes % 60)}`;
}
