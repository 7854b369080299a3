import type { ThresholdResult } from '../../model/threshold.ts';
import { isoDate } from '../../../cells/cell.ts';
import { periodOfExposure } from '../asLeft/exposure.ts';
import { mayBeLate } from '../../model/change.ts';
import { rounded } from '../../model/wording.ts';
import type { AsLeftResult } from '../../model/report.ts';
import type { Audited, Say } from './rule.ts';

/**
 * How long the protection may have been wrong: from when it was last known good to when the fault was measured, and
 * whether it goes on as left (`null`: not judged as left).
 */
export function exposureRule(
  { channel, thresholds, today, cell }: Audited,
  asLeft: AsLeftResult | null,
  say: Say,
): void {
  const { lastGoodOn, calibratedOn } = channel;
  if (calibratedOn === null) return;
  const at = { table: 'channels', column: 'lastGoodOn' } as const;
  if (lastGoodOn !== null && calibratedOn < lastGoodOn) {
    const [good, calibrated] = [cell('channels', 'lastGoodOn'), cell('channels', 'calibratedOn')];
    const message = `Last good on ${isoDate(lastGoodOn)} (cell ${good}) lies after calibrated on ${isoDate(calibratedOn)} (cell ${calibrated}). Check the entries.`;
    say({ rule: 'dates-out-of-order', severity: 'warning', message, ...at });
    return;
  }
  const bad = thresholds.filter(({ verdict }) => mayBeLate(verdict));
  const { from, to } = periodOfExposure(channel, today);
  if (bad.length === 0 || to === null) return;
  const names = namesOf(bad);
  const since = ending(thresholds, asLeft);
  if (from === null) {
    const why =
      lastGoodOn === null
        ? 'no day is given on which the channel was last good'
        : 'the day given as last good is the very day on which it was found';
    const message = `From when on the ${names} may have been late or unable to act can't be told: ${why}. It was found on ${isoDate(to)}. ${since} Enter the day on which it was last good before that.`;
    say({ rule: 'exposure-start-unknown', severity: 'note', message, ...at });
    return;
  }
  const message = `For up to ${rounded(to - from)} days, from ${isoDate(from)} to ${isoDate(to)}, the ${names} may have been late or unable to act. ${since}`;
  say({ rule: 'period-of-exposure', severity: 'warning', message, ...at });
}

function namesOf(thresholds: readonly ThresholdResult[]): string {
  return [...new Set(thresholds.map(({ name }) => name))].join(' and ');
}

/** Whether what was found goes on since, as far as was judged as left. */
function ending(thresholds: readonly ThresholdResult[], asLeft: AsLeftResult | null): string {
  if (!asLeft)
    return 'Nothing was judged as left: it goes on until the chain is corrected and measured again.';
  const left = asLeft.thresholds.filter(({ verdict }, index) => {
    const found = thresholds[index];
    return found !== undefined && mayBeLate(found.verdict) && mayBeLate(verdict);
  });
  const sure = left.filter(({ verdict }) => verdict !== 'undetermined');
  const unsure = left.filter(({ verdict }) => verdict === 'undetermined');
  if (left.length === 0) return 'As left it has ended.';
  return [
    sure.length > 0 ? `For the ${namesOf(sure)} it goes on as left.` : '',
    unsure.length > 0 ? `Whether it goes on as left for the ${namesOf(unsure)} can't be told.` : '',
  ]
    .filter((part) => part !== '')
    .join(' ');
}
