import type { AsLeftReadingRules } from './asLeftReadingRules.ts';
import type { CellRules } from './cellRules.ts';
import type { HistoryRules } from './historyRules.ts';
import type { RawRecordRules } from './rawRecordRules.ts';
import type { TableRules } from './tableRules.ts';
import type { UnitRules } from './unitRules.ts';
import type { UntidyRules } from './untidyRules.ts';
import type { ValueRules } from './valueRules.ts';

/** What can be said of cells, rows, tables, records and histories as they are read. */
export type ReadingRules = CellRules &
  ValueRules &
  UnitRules &
  TableRules &
  RawRecordRules &
  HistoryRules &
  UntidyRules &
  AsLeftReadingRules;
