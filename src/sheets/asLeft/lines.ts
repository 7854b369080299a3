import { mayBeLate } from '../../audit/model/since.ts';
import { rank } from '../../audit/model/order.ts';
import type { AsFoundResult, ChannelResult, Exposure, Report } from '../../audit/model/report.ts';
import { trips, type ThresholdResult } from '../../audit/model/threshold.ts';

/** One line of the sheet: a threshold as found and as left, which is how it is now. */
export interface AsLeftLine {
  readonly channel: ChannelResult;
  readonly asFound: AsFoundResult;
  readonly found: ThresholdResult;
  readonly left: ThresholdResult;
  /** `null`: it was not found late or unreachable. */
  readonly exposure: Exposure | null;
}

/**
 * Every threshold that was measured again: first what is late, unreachable or undetermined as left, what trips before what
 * warns; then the others, worst first; of equals as the report has them.
 */
export function asLeftLines({ channels }: Report): readonly AsLeftLine[] {
  return channels.flatMap(linesOf).sort(worstAsLeftFirst);
}

function linesOf(channel: ChannelResult): AsLeftLine[] {
  const { asFound, thresholds, exposure } = channel;
  if (!asFound) return [];
  return thresholds.flatMap((left, index): AsLeftLine[] => {
    const found = asFound.thresholds[index];
    if (!found || left.setpoint === null) return [];
    const own = exposure.find(({ name, multiplier }) => name === left.name && multiplier === left.multiplier);
    return [{ channel, asFound, found, left, exposure: own ?? null }];
  });
}

function worstAsLeftFirst({ left: one }: AsLeftLine, { left: other }: AsLeftLine): number {
  const late = Number(mayBeLate(other.verdict)) - Number(mayBeLate(one.verdict));
  const tripping = Number(trips(other.name)) - Number(trips(one.name));
  const worse = rank(one.verdict) - rank(other.verdict);
  return late || (mayBeLate(one.verdict) ? tripping || worse : worse || tripping);
}
