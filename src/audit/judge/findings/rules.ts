import {
  leavesFaults,
  noInterim,
  readingAboveFullScale,
  readingBeyondInterim,
  readingsPointTo,
} from './readingRules.ts';
import {
  type Audited,
  type Rule,
  type AddFinding,
  type Statement,
  columnOfThreshold,
  setpointOf,
} from './rule.ts';
import {
  alertNotBelowDanger,
  configuredFarFromRated,
  inBypass,
  longDelay,
  monitorGainOff,
  runoutLarge,
  shortLinearRange,
} from './settingsRules.ts';
import { unitSlip } from './unitSlip.ts';
import { verdictRules } from './verdictRules.ts';
import { isoDate } from '../../../cells/cell.ts';
import { factOf, factOfThreshold } from '../../model/findings.ts';
import { trips } from '../../model/threshold.ts';

/** Danger that acts, or with its uncertainty may act, beyond the greatest real displacement that the machine allows. */
const beyondLimit: Rule = ({ channel, thresholds }, addFinding) => {
  const { limit } = channel;
  if (limit === null) return;
  const at = { table: 'channels', column: 'limit' } as const;
  for (const threshold of thresholds) {
    const { beyondLimit: beyond, lines, probabilityBeyondLimit: probability } = threshold;
    if (beyond === null || beyond === 'no') continue;
    const level = setpointOf(threshold, channel);
    const sign = Math.sign(threshold.setpoint ?? 1);
    if (beyond === 'yes') {
      const latest = Math.max(...lines.map(({ effective }) => sign * (effective ?? -Infinity)));
      const values = { ...level, effective: sign * latest, limit, probability };
      addFinding({ ...factOfThreshold('beyond-limit', 'critical', threshold, values), ...at });
    } else {
      const values = { ...level, limit, high: sign < 0 ? threshold.low : threshold.high };
      addFinding({ ...factOfThreshold('may-be-beyond-limit', 'critical', threshold, values), ...at });
    }
  }
};

/** A threshold that has moved into a worse zone of shaft vibration than it was set for (ISO 20816-3 zones, from memory). */
const worseZone: Rule = ({ channel, thresholds }, addFinding) => {
  for (const threshold of thresholds) {
    const { name, zone, intendedZone, multiplier } = threshold;
    if (multiplier !== 1 || zone === null || intendedZone === null || zone <= intendedZone) continue;
    const values = { ...setpointOf(threshold, channel), zone, intendedZone, speed: channel.speed ?? NaN };
    addFinding({
      ...factOfThreshold('in-worse-zone', trips(name) ? 'warning' : 'note', threshold, values),
      table: 'settings',
      column: columnOfThreshold(name),
    });
  }
};

/** How old the calibration is, against the policy's interval; a date that has not come yet. */
const calibrationAge: Rule = ({ channel, policy, today }, addFinding) => {
  const { calibratedOn } = channel;
  if (calibratedOn === null) return;
  const at = { table: 'channels', column: 'calibratedOn' } as const;
  const age = today - calibratedOn;
  if (age < 0) {
    const values = { calibratedOn: isoDate(calibratedOn), today: isoDate(today) };
    addFinding({ ...factOf('calibration-in-the-future', 'warning', values), ...at });
    return;
  }
  const interval = policy.calibrationIntervalDays;
  if (age <= interval) return;
  const values = { calibratedOn: isoDate(calibratedOn), age, interval };
  addFinding({ ...factOf('calibration-overdue', 'warning', values), ...at });
};

/** Two laws of growth at once contradict each other. */
const growthTwice: Rule = ({ channel }, addFinding) => {
  const { growthPerDay, doublingDays } = channel;
  if (growthPerDay === null || doublingDays === null) return;
  addFinding({ ...factOf('growth-given-twice', 'warning', {}), table: 'channels', column: 'growth' });
};

/** Rules that say no more than what the verdicts of the thresholds are. */
const ofVerdicts: readonly Rule[] = [verdictRules, beyondLimit, inBypass];

/** Every other rule, in the order in which its findings stand in a report. A new rule is one entry here. */
const rules: readonly Rule[] = [
  worseZone,
  alertNotBelowDanger,
  configuredFarFromRated,
  monitorGainOff,
  runoutLarge,
  unitSlip,
  readingsPointTo,
  readingBeyondInterim,
  readingAboveFullScale,
  noInterim,
  leavesFaults,
  calibrationAge,
  growthTwice,
  longDelay,
  shortLinearRange,
];

/** What follows from the verdicts of one channel's thresholds. */
export function verdictFacts(audited: Audited): Statement[] {
  const found: Statement[] = [];
  for (const rule of ofVerdicts) rule(audited, (statement) => found.push(statement));
  return found;
}

/** Lets every other rule look at one channel. */
export function applyRules(audited: Audited, addFinding: AddFinding): void {
  for (const rule of rules) rule(audited, addFinding);
}
