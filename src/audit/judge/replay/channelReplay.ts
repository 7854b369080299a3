import { onePerInstant } from '../../../method/replay/inOrder.ts';
import { replayInOrder, type Replay, type Replayed } from '../../../method/replay/replay.ts';
import type { LevelOverTime } from '../../../method/replay/setting.ts';
import type { ReplayOutcome } from '../../model/replay.ts';
import type { ThresholdName } from '../../model/threshold.ts';
import type { Chain, ChainOverTime } from './chain.ts';
import { timeline, type TimelinePoint, type Timeline } from './timeline.ts';

/** A threshold to be replayed, in the channel's unit; counter-direction setpoints are negative. */
export interface Watched {
  readonly name: ThresholdName;
  readonly setpoint: number;
  /** s. */
  readonly delay: number;
}

export interface ReplaySettings {
  readonly chain: ChainOverTime;
  /** Milliseconds since 1970 from which the later chain held; `NaN`: one throughout. */
  readonly correctedAt: number;
  readonly thresholds: readonly Watched[];
  /** s; `null`: three times the usual time between readings. */
  readonly maxGap: number | null;
  readonly between: 'line' | 'hold';
}

/** What came of a threshold; times in s from the first reading. */
export interface WatchedResult extends Watched {
  readonly replayed: Replayed;
  readonly outcome: ReplayOutcome;
  readonly shouldActAt: number;
  /** At the first known reading it was beyond already. */
  readonly fromStart: boolean;
}

/** What came of a channel's record. */
export interface ChannelRecord {
  readonly origin: number;
  /** As in the settings. */
  readonly correctedAt: number;
  readonly last: number;
  readonly readings: number;
  readonly unknown: number;
  readonly interval: number | null;
  readonly maxGap: number | null;
  readonly thresholds: readonly WatchedResult[];
  readonly timeline: readonly TimelinePoint[];
}

/** Replays a channel's readings as they go by, in order of time, and keeps no more of them than a drawing shows. */
export interface ChannelReplay {
  /** Milliseconds since 1970 in UTC, never falling; the reading in the channel's unit. */
  readonly sample: (utc: number, reading: number) => void;
  /** `null` where there was no reading. */
  readonly end: () => ChannelRecord | null;
}

/** Readings from which the usual time between them is taken. */
const first = 501;
/** Gaps longer than so many times the usual time between readings leave what is between unknown (our choice). */
const gapFactor = 3;
/** Times closer than a microsecond are the same: clocks are read to the millisecond. */
const slack = 1e-6;
/** Readings below the level after which an event is over. */
const quiet = 240;

export function channelReplay(settings: ReplaySettings): ChannelReplay {
  const { thresholds, between, correctedAt, chain } = settings;
  let held: { utc: number; reading: number }[] | null = [];
  let [origin, last, lastReading] = [NaN, NaN, NaN];
  let [readings, unknown] = [0, 0];
  let [interval, maxGap]: [number | null, number | null] = [null, null];
  let watches: Watch[] = [];

  const begin = (): void => {
    if (!held) return;
    const early = held;
    held = null;
    interval = median(early.map(({ utc }) => utc));
    maxGap = settings.maxGap ?? (interval === null ? null : gapFactor * interval);
    const from = (correctedAt - origin) / 1000;
    const setting = { maxGap: maxGap ?? Infinity, between };
    // Where nothing acted the record is drawn whole, by its first threshold.
    watches = thresholds.map((threshold, at) => watch(threshold, chain, from, setting, at === 0));
    for (const { utc, reading } of early) pass(utc, reading);
  };
  const pass = (utc: number, reading: number): void => {
    const time = (utc - origin) / 1000;
    for (const one of watches) one.sample(time, reading);
  };
  const each = onePerInstant((utc, reading) => {
    if (readings === 0) origin = utc;
    readings++;
    if (Number.isNaN(reading)) unknown++;
    [last, lastReading] = [utc, reading];
    if (!held) {
      pass(utc, reading);
      return;
    }
    held.push({ utc, reading });
    if (held.length === first) begin();
  });
  return {
    sample: each.sample,
    end: () => {
      each.end();
      begin();
      if (readings === 0) return null;
      const results = watches.map((one) => one.end(lastReading, interval));
      const drawn = watches.find(({ drawn: { began } }) => began()) ?? watches[0];
      return {
        origin,
        correctedAt,
        last,
        readings,
        unknown,
        interval,
        maxGap,
        thresholds: results,
        timeline: drawn?.drawn.points() ?? [],
      };
    },
  };
}

interface Watch {
  readonly sample: (time: number, reading: number) => void;
  readonly end: (lastReading: number, interval: number | null) => WatchedResult;
  readonly drawn: Timeline;
}

/** One threshold over the record; one of the counter direction is watched upside down. */
function watch(
  threshold: Watched,
  { first: before, later }: ChainOverTime,
  from: number,
  { maxGap, between }: { readonly maxGap: number; readonly between: 'line' | 'hold' },
  drawnWhole: boolean,
): Watch {
  const { setpoint, delay } = threshold;
  const sign = setpoint < 0 ? -1 : 1;
  const levelOf = (chain: Chain): number => sign * chain.shownAt(setpoint);
  const should: LevelOverTime = {
    level: levelOf(before),
    later: later ? [{ from, level: levelOf(later.chain) }] : [],
  };
  const levels = [sign * setpoint, should.level, ...should.later.map(({ level }) => level)];
  const lowest = Math.min(...levels);
  const drawn = timeline(drawnWhole);
  const over: Replay = replayInOrder({ level: sign * setpoint, later: [] }, should, {
    delay,
    maxGap,
    between,
    slack,
    deadband: null,
  });
  let [wasBeyond, below] = [false, 0];
  let fromStart: boolean | null = null;
  let reached = false;
  return {
    drawn,
    sample: (time, given) => {
      const reading = sign * given;
      over.sample(time, reading);
      if (!Number.isNaN(reading)) fromStart ??= reading >= should.level;
      if (reading >= sign * setpoint) reached = true;
      drawn.sample(time, given);
      const isBeyond = reading >= lowest;
      if (isBeyond || wasBeyond) {
        const [acted, due] = [over.hasActed(), over.shouldHave()];
        if (acted || due) drawn.begin();
        if (acted && due) drawn.end();
      }
      below = isBeyond ? 0 : below + 1;
      if (below === quiet && drawn.began()) drawn.end();
      wasBeyond = isBeyond;
    },
    end: (lastReading, interval) => {
      const replayed = over.end();
      if (!drawn.began() && !(Number.isNaN(replayed.acts.proven) && Number.isNaN(replayed.should.proven)))
        drawn.begin();
      const shouldActAt = (later && from <= 0 ? later.chain : before).shownAt(setpoint);
      const isRunning = sign * lastReading >= sign * setpoint;
      // Between readings farther apart than the delay it may have stayed there long enough.
      const isOpen = isRunning || (reached && interval !== null && interval > delay);
      return {
        ...threshold,
        replayed,
        shouldActAt,
        fromStart: fromStart === true,
        outcome: outcomeOf(replayed, isOpen),
      };
    },
  };
}

/** Seconds within which two moments are one. */
const sameMoment = 5e-4;

/** `isOpen`: it may have acted though the readings show no delay run out: they are too rare for that, or end too early. */
function outcomeOf({ acts, should, late }: Replayed, isOpen: boolean): ReplayOutcome {
  const never = Number.isNaN;
  if (never(acts.earliest) && never(should.earliest)) return isOpen ? 'not known' : 'not reached';
  if (!never(acts.proven) && !never(should.proven))
    return Math.abs(late) < sameMoment ? 'as set' : late > 0 ? 'late' : 'early';
  if (!never(should.proven) && never(acts.earliest) && !isOpen) return 'did not act';
  if (!never(acts.proven) && never(should.earliest)) return 'false';
  return 'not known';
}

/** Median of the times between readings, s; `null` with fewer than two. */
function median(utc: readonly number[]): number | null {
  const steps = utc.slice(1).map((time, index) => (time - (utc[index] ?? NaN)) / 1000);
  return steps.toSorted((one, other) => one - other)[Math.floor(steps.length / 2)] ?? null;
}
