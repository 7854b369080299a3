import type { Policy } from '../../audit/model/policy.ts';
import { amount, percent } from '../../audit/model/wording.ts';

/** The policy of an audit in one line. */
export function policySentence(policy: Policy): string {
  const { tolerance, rule, coverage, calibrationIntervalDays, delays } = policy;
  return [
    `Policy: tolerance ${percent(tolerance)} of the sensitivity`,
    `${rule} decision`,
    `coverage factor ${amount(coverage, '')} where none is given`,
    `calibration at most ${amount(calibrationIntervalDays, 'days')} old`,
    `delays at most ${amount(delays.alert, 's')} (alert) and ${amount(delays.danger, 's')} (danger).`,
  ].join('; ');
}
