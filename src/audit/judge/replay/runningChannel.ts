import { offsetAtOf } from '../../../method/replay/localTime.ts';
import { convert } from '../../../units/unit.ts';
import { convertDetection } from '../../../units/detection.ts';
import { parseUnit, type Unit } from '../../../units/parse.ts';
import type { Policy } from '../../model/policy.ts';
import type { ChannelResult } from '../../model/report.ts';
import type { NotReplayed } from '../../model/rules/replayRules.ts';
import { trips } from '../../model/threshold.ts';
import { chainOf, type ChainOverTime } from './chain.ts';
import { channelReplay, type ChannelReplay, type Watched } from './channelReplay.ts';
import type { SortedReadings } from './sortedReadings.ts';

type Channel = Omit<ChannelResult, 'findings'>;

/** One channel while its readings go by. */
export interface Running {
  readonly of: Channel;
  readonly chain: ChainOverTime;
  readonly replay: ChannelReplay;
  last: number;
  outOfOrder: boolean;
  sorted: SortedReadings | null;
}

/** Readies a channel for its readings; `null` where nothing is known of what its monitor showed, which is told. */
export function runningOf(
  of: Channel,
  policy: Policy['replay'],
  zone: string | null,
  notReplayed: (values: NotReplayed) => void,
): Running | null {
  const chain = chainOf(of);
  if (typeof chain === 'string') {
    notReplayed({ kind: chain, tag: of.tag });
    return null;
  }
  const thresholds = watchedOf(of);
  if (thresholds.length === 0) {
    notReplayed({ kind: 'no setpoint', tag: of.tag });
    return null;
  }
  const midnight = chain.later && chain.later.from * 86_400_000;
  const replay = channelReplay({
    chain,
    correctedAt: midnight === null ? NaN : midnight - offsetOf(zone)(midnight),
    thresholds,
    maxGap: policy.maxGap,
    between: policy.between,
  });
  return { of, chain, replay, last: NaN, outOfOrder: false, sorted: null };
}

/** The plain setpoints of a channel, those that trip first. */
function watchedOf({ thresholds, inputs }: Channel): Watched[] {
  return thresholds
    .flatMap(({ name, setpoint, multiplier }): Watched[] => {
      if (setpoint === null || multiplier !== 1) return [];
      const delay = (trips(name) ? inputs.dangerDelay : inputs.alertDelay) ?? 0;
      return [{ name, setpoint, delay }];
    })
    .sort((one, other) => Number(trips(other.name)) - Number(trips(one.name)));
}

/** Offsets of the zone by which a table is told, in ms; UTC where none is named. */
export function offsetOf(zone: string | null): (utc: number) => number {
  return (zone === null ? null : offsetAtOf(zone)) ?? (() => 0);
}

/** What a reading is multiplied by to be in the channel's unit and detection; `null` where the units don't fit. */
export function factorBetween(
  given: string | Unit,
  wanted: string | null,
  detection: string | null,
): number | null {
  const [from, to] = [
    typeof given === 'string' ? parseUnit(given) : given,
    wanted === null ? undefined : parseUnit(wanted),
  ];
  if (!from || !to) return null;
  const factor = convert(1, from, to);
  if (Number.isNaN(factor)) return null;
  const own = detection === 'p-p' || detection === '0-p' || detection === 'rms' ? detection : null;
  return from.detection && own ? convertDetection(factor, from.detection, own) : factor;
}
