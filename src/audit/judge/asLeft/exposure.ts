import type { ThresholdResult, ThresholdVerdict } from '../../model/threshold.ts';
import { isoDate } from '../../../cells/cell.ts';
import type { Channel } from '../../model/channel.ts';
import type { Exposure } from '../../model/report.ts';

/** Days counted from 1970-01-01; `null`: not given, or not possible beside the other day or the day of the audit. */
export interface Period {
  readonly from: number | null;
  readonly to: number | null;
}

/**
 * From when a channel was last known to be good to when its fault was measured. A day after the day of the audit, or a last
 * good day that does not lie before the calibration, tells nothing.
 */
export function periodOfExposure(
  { lastGoodOn, calibratedOn }: Pick<Channel, 'lastGoodOn' | 'calibratedOn'>,
  today: number,
): Period {
  const to = calibratedOn !== null && calibratedOn <= today ? calibratedOn : null;
  if (lastGoodOn === null || lastGoodOn > today) return { from: null, to };
  return { from: calibratedOn === null || lastGoodOn < calibratedOn ? lastGoodOn : null, to };
}

const none: readonly Exposure[] = [];

/**
 * How long each threshold that was found late or unreachable may have been so, and whether it still is now; `now` is `null`
 * where the channel was not measured again.
 */
export function exposuresOf(
  channel: Channel,
  found: readonly ThresholdResult[],
  now: readonly ThresholdResult[] | null,
  today: number,
): readonly Exposure[] {
  if (!found.some(isExposed)) return none;
  const period = periodOfExposure(channel, today);
  const dates = {
    from: period.from === null ? null : isoDate(period.from),
    to: period.to === null ? null : isoDate(period.to),
    days: period.from === null || period.to === null ? null : period.to - period.from,
  };
  return found.flatMap((threshold, index): Exposure[] => {
    if (!isExposed(threshold)) return [];
    const { name, multiplier } = threshold;
    return [{ name, multiplier, ...dates, goesOn: goesOn(now?.[index]?.verdict ?? 'incomplete') }];
  });
}

function isExposed({ verdict }: ThresholdResult): boolean {
  return verdict === 'late' || verdict === 'unreachable';
}

function goesOn(now: ThresholdVerdict): boolean | null {
  if (now === 'incomplete' || now === 'undetermined') return null;
  return now === 'late' || now === 'unreachable';
}
