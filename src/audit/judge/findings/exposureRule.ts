import type { ThresholdName, ThresholdResult } from '../../model/threshold.ts';
import { isoDate } from '../../../cells/cell.ts';
import { periodOfExposure } from '../asLeft/exposure.ts';
import { mayBeLate } from '../../model/change.ts';
import { factOf } from '../../model/findings.ts';
import type { GoesOn } from '../../model/rules/leftRules.ts';
import type { Audited, Say } from './rule.ts';

/**
 * How long the protection may have been wrong: from when it was last known good to when the fault was measured, and
 * whether it goes on since (`now` is `null` where the channel was not measured again).
 */
export function exposureRule(
  { channel, thresholds, today, cell }: Audited,
  now: readonly ThresholdResult[] | null,
  say: Say,
): void {
  const { lastGoodOn, calibratedOn } = channel;
  if (calibratedOn === null) return;
  const at = { table: 'channels', column: 'lastGoodOn' } as const;
  if (lastGoodOn !== null && calibratedOn < lastGoodOn) {
    const values = {
      lastGoodOn: isoDate(lastGoodOn),
      lastGoodCell: cell('channels', 'lastGoodOn'),
      calibratedOn: isoDate(calibratedOn),
      calibratedCell: cell('channels', 'calibratedOn'),
    };
    say({ ...factOf('dates-out-of-order', 'warning', values), ...at });
    return;
  }
  const bad = thresholds.filter(({ verdict }) => mayBeLate(verdict));
  const { from, to } = periodOfExposure(channel, today);
  if (bad.length === 0 || to === null) return;
  const known = { thresholds: namesOf(bad), to: isoDate(to), goesOn: goesOn(thresholds, now) };
  if (from === null) {
    const values = { ...known, lastGoodOn: lastGoodOn === null ? null : isoDate(lastGoodOn) };
    say({ ...factOf('exposure-start-unknown', 'note', values), ...at });
    return;
  }
  const values = { ...known, from: isoDate(from), days: to - from };
  say({ ...factOf('period-of-exposure', 'warning', values), ...at });
}

function namesOf(thresholds: readonly ThresholdResult[]): ThresholdName[] {
  return [...new Set(thresholds.map(({ name }) => name))];
}

/** Whether what was found goes on since, as far as was judged as left. */
function goesOn(thresholds: readonly ThresholdResult[], now: readonly ThresholdResult[] | null): GoesOn {
  if (!now) return null;
  const left = now.filter(({ verdict }, index) => {
    const found = thresholds[index];
    return found !== undefined && mayBeLate(found.verdict) && mayBeLate(verdict);
  });
  return {
    sure: namesOf(left.filter(({ verdict }) => verdict !== 'undetermined')),
    unsure: namesOf(left.filter(({ verdict }) => verdict === 'undetermined')),
  };
}
