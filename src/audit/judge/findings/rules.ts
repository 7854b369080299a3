import { beyondLimit, worseZone } from './limitRules.ts';
import { leavesFaults, noInterim, readingBeyondInterim, readingsPointTo } from './readingRules.ts';
import { calibrationAge, growthTwice } from './recordRules.ts';
import type { Audited, Rule, Say, Statement } from './rule.ts';
import {
  alertNotBelowDanger,
  configuredFarFromRated,
  inBypass,
  longDelay,
  shortLinearRange,
} from './settingsRules.ts';
import { unitSlip } from './unitSlip.ts';
import { verdictRules } from './verdictRules.ts';

/** Rules that say no more than what the verdicts of the thresholds are. */
const ofVerdicts: readonly Rule[] = [verdictRules, beyondLimit, inBypass];

/** Every other rule, in the order in which its findings stand in a report. A new rule is one entry here. */
export const rules: readonly Rule[] = [
  worseZone,
  alertNotBelowDanger,
  configuredFarFromRated,
  unitSlip,
  readingsPointTo,
  readingBeyondInterim,
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
export function applyRules(audited: Audited, say: Say): void {
  for (const rule of rules) rule(audited, say);
}
