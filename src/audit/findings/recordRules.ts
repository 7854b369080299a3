import { periodOfExposure } from '../asLeft/exposure.ts';
import { mayBeLate } from '../report/change.ts';
import { isoDate } from '../tables/found.ts';
import { rounded } from '../report/wording.ts';
import type { Rule } from './rule.ts';

/** How old the calibration is, against the policy's interval; a date that has not come yet. */
export const calibrationAge: Rule = ({ channel, policy, today }, say) => {
  const { calibratedOn } = channel;
  if (calibratedOn === null) return;
  const at = { table: 'channels', column: 'calibratedOn' } as const;
  const age = today - calibratedOn;
  if (age < 0) {
    const message = `The calibration date ${isoDate(calibratedOn)} lies after the day of this audit, ${isoDate(today)}. Check the entry.`;
    say({ rule: 'calibration-in-the-future', severity: 'warning', message, ...at });
    return;
  }
  if (age <= policy.calibrationIntervalDays) return;
  const message = `The calibration of ${isoDate(calibratedOn)} is ${rounded(age)} days old; the policy allows ${rounded(policy.calibrationIntervalDays)}.`;
  say({ rule: 'calibration-overdue', severity: 'warning', message, ...at });
};

/** How long the protection may have been wrong: from when it was last known good to when the fault was measured. */
export const exposure: Rule = ({ channel, thresholds, today, cell }, say) => {
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
  const names = [...new Set(bad.map((threshold) => threshold.name))].join(' and ');
  if (from === null) {
    const message = `From when on the ${names} may have been late or unable to act can't be told: no day is given on which the channel was last good. It was found on ${isoDate(to)}. Enter the day.`;
    say({ rule: 'exposure-start-unknown', severity: 'note', message, ...at });
    return;
  }
  const message = `For up to ${rounded(to - from)} days, from ${isoDate(from)} to ${isoDate(to)}, the ${names} may have been late or unable to act.`;
  say({ rule: 'period-of-exposure', severity: 'warning', message, ...at });
};

/** Two laws of growth at once contradict each other. */
export const growthTwice: Rule = ({ channel }, say) => {
  const { growthPerDay, doublingDays } = channel;
  if (growthPerDay === null || doublingDays === null) return;
  say({
    rule: 'growth-given-twice',
    severity: 'warning',
    message:
      'Growth per day and doubling time are both given; no times were worked out. Keep the one that fits.',
    table: 'channels',
    column: 'growth',
  });
};
