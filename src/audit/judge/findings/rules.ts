import { beyondLimit, worseZone } from './limitRules.ts';
import { leavesFaults, noInterim, readingBeyondInterim, readingsPointTo } from './readingRules.ts';
import { calibrationAge, growthTwice } from './recordRules.ts';
import type { Audited, Rule, Say } from './rule.ts';
import {
  alertNotBelowDanger,
  configuredFarFromRated,
  inBypass,
  longDelay,
  shortLinearRange,
} from './settingsRules.ts';
import { unitSlip } from './unitSlip.ts';
import { verdictRules } from './verdictRules.ts';

/** Every rule, in the order in which its findings stand in a report. A new rule is one entry here. */
export const rules: readonly Rule[] = [
  verdictRules,
  beyondLimit,
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
  inBypass,
  shortLinearRange,
];

/** Lets every rule look at one channel. */
export function applyRules(audited: Audited, say: Say): void {
  for (const rule of rules) rule(audited, say);
}
