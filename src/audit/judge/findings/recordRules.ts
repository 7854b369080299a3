import { isoDate } from '../../../cells/cell.ts';
import { rounded } from '../../model/wording.ts';
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
