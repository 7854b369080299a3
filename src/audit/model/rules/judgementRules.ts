import type { DriftRules } from './driftRules.ts';
import type { GroupRules } from './groupRules.ts';
import type { LeftRules } from './leftRules.ts';
import type { RecordRules } from './recordRules.ts';
import type { SettingsRules } from './settingsRules.ts';
import type { ThresholdRules } from './thresholdRules.ts';

/** What can be said of a channel, its thresholds and its voting groups as they are judged. */
export interface JudgementRules
  extends ThresholdRules, SettingsRules, LeftRules, RecordRules, GroupRules, DriftRules {}
