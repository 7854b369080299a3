import type { NotRead } from '../model/attention.ts';
import type { PlacedFact } from '../model/findings.ts';
import type { ColumnReading } from '../model/report.ts';
import type { HistoryBook } from './history/reading.ts';
import type { TagIndex } from './join/tagIndex.ts';
import type { RecordBook } from './records/rawRecord.ts';
import type { Sheet } from '../../cells/sheet.ts';
import type { Tables } from './tables/found.ts';
import type { TidyList } from './tidy/tidyList.ts';
import type { Understanding } from './understand/understand.ts';

/** All that is read of a workbook, whichever way it is read. */
export interface BookRead extends ListsRead {
  /** Sheets of recorded readings. */
  readonly trends: readonly Sheet[];
  /** Sheets of run-ups, sensitivities against speed and sensors. */
  readonly againstSpeed: readonly Sheet[];
}

/** What is read of a workbook without its sheets of recorded readings. */
export interface ListsRead {
  readonly tables: Tables;
  readonly index: Readonly<Record<'channels' | 'settings', TagIndex>>;
  readonly records: RecordBook;
  readonly history: HistoryBook;
  readonly columns: readonly ColumnReading[];
  readonly notRead: readonly NotRead[];
  /** What there is to say of lists, rows and columns as a whole. */
  readonly remarks: readonly PlacedFact[];
  /** What the lists were understood to be and the list made of it; `null` where both tables were read by their standard headers. */
  readonly understood: { readonly understanding: Understanding; readonly list: TidyList } | null;
}

/** Nothing of a workbook can be judged before a person has answered. */
export interface NothingRead {
  readonly understanding: Understanding;
  /** Why the standard tables can't be told; `null` where they can, and something outranks them. */
  readonly refusal: string | null;
}
