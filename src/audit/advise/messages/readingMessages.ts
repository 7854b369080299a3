import type { ReadingRules } from '../../model/rules/readingRules.ts';
import { asLeftReadingMessages } from './asLeftReadings.ts';
import { cellMessages } from './cells.ts';
import { historyMessages } from './history.ts';
import { rawRecordMessages } from './rawRecords.ts';
import type { Sayings } from './sayings.ts';
import { tableMessages } from './tables.ts';
import { unitMessages } from './units.ts';
import { untidyMessages } from './untidy.ts';
import { valueMessages } from './values.ts';

/** What is said of cells, rows, tables, records and histories. */
export const readingMessages: Sayings<ReadingRules> = {
  ...cellMessages,
  ...valueMessages,
  ...unitMessages,
  ...tableMessages,
  ...rawRecordMessages,
  ...historyMessages,
  ...asLeftReadingMessages,
  ...untidyMessages,
};
