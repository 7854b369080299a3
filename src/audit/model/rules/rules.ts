import type { GroupRules } from './groupRules.ts';
import type { AsLeftRules, AsLeftReadingRules } from './asLeftRules.ts';
import type { ReplayRules } from './replayRules.ts';
import type { RunUpRules } from './runUpRules.ts';
import type { RecordRules, RawRecordRules } from './recordRules.ts';
import type { SettingsRules } from './settingsRules.ts';
import type { ThresholdRules } from './thresholdRules.ts';
import type { CellRules, ValueRules, UnitRules } from './cellRules.ts';
import type { HistoryRules, DriftRules } from './historyRules.ts';
import type { TableRules, UntidyRules } from './tableRules.ts';

/** What can be said of cells, rows, tables, records and histories as they are read. */
export type ReadingRules = CellRules &
  ValueRules &
  UnitRules &
  TableRules &
  RawRecordRules &
  HistoryRules &
  UntidyRules &
  AsLeftReadingRules;

/** What can be said of a channel, its thresholds and its voting groups as they are judged. */
export interface JudgementRules
  extends
    ThresholdRules,
    SettingsRules,
    AsLeftRules,
    RecordRules,
    GroupRules,
    DriftRules,
    ReplayRules,
    RunUpRules {}

/** Every rule and the values that its sentence is made from. Names are an interface: never rename one. */
export type RuleValues = ReadingRules & JudgementRules;

export type RuleId = keyof RuleValues;
