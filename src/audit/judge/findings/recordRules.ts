import { isoDate } from '../../../cells/cell.ts';
import { factOf } from '../../model/findings.ts';
import type { Rule } from './rule.ts';

/** How old the calibration is, against the policy's interval; a date that has not come yet. */
export const calibrationAge: Rule = ({ channel, policy, today }, say) => {
  const { calibratedOn } = channel;
  if (calibratedOn === null) return;
  const at = { table: 'channels', column: 'calibratedOn' } as const;
  const age = today - calibratedOn;
  if (age < 0) {
    const values = { calibratedOn: isoDate(calibratedOn), today: isoDate(today) };
    say({ ...factOf('calibration-in-the-future', 'warning', values), ...at });
    return;
  }
  const interval = policy.calibrationIntervalDays;
  if (age <= interval) return;
  const values = { calibratedOn: isoDate(calibratedOn), age, interval };
  say({ ...factOf('calibration-overdue', 'warning', values), ...at });
};

/** Two laws of growth at once contradict each other. */
export const growthTwice: Rule = ({ channel }, say) => {
  const { growthPerDay, doublingDays } = channel;
  if (growthPerDay === null || doublingDays === null) return;
  say({ ...factOf('growth-given-twice', 'warning', {}), table: 'channels', column: 'growth' });
};
