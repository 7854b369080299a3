import type { FactOf } from '../../model/findings.ts';
import type { JudgementRules } from '../../model/rules/judgementRules.ts';
import { leftMessages } from './asLeftThresholds.ts';
import { recordMessages } from './calibrationRecords.ts';
import { driftMessages } from './drift.ts';
import { groupMessages } from './groups.ts';
import { settingsMessages } from './settings.ts';
import { thresholdMessages } from './thresholds.ts';

/** What is said of channels, thresholds and voting groups. */
export const judgementMessages: { readonly [K in keyof JudgementRules]: (fact: FactOf<K>) => string } = {
  ...thresholdMessages,
  ...settingsMessages,
  ...leftMessages,
  ...recordMessages,
  ...groupMessages,
  ...driftMessages,
};
