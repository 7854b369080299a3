import type { Workbook } from '../../cells/sheet.ts';
import type { ColumnMap } from '../model/columnMap.ts';
import type { Steps } from '../model/steps.ts';
import type { BookRead } from './bookRead.ts';
import { findHistory } from './history/findHistory.ts';
import { tableProblems } from './join/problems.ts';
import { indexTags } from './join/tagIndex.ts';
import { findRecords } from './records/findRecords.ts';
import { columnReadings } from './tables/columnReadings.ts';
import type { Tables } from './tables/found.ts';
import type { HeaderRows } from './tables/searchHeaders.ts';
import { notRead } from './unread/notRead.ts';

/** Reads a workbook whose two tables were found by their standard headers. `today`: day of the audit, from 1970-01-01. */
export function* standardBook(
  workbook: Workbook,
  tables: Tables,
  headerRows: HeaderRows,
  map: ColumnMap,
  today: number,
): Steps<void, BookRead> {
  const settings = indexTags(tables.settings);
  yield;
  const channels = indexTags(tables.channels);
  yield;
  const isTag = (key: string): boolean => channels.hasTag(key);
  const records = yield* findRecords(workbook, tables, isTag, headerRows);
  const history = yield* findHistory(headerRows, tables, today);
  return {
    tables,
    index: { channels, settings },
    records,
    history,
    columns: [...columnReadings(tables.channels), ...columnReadings(tables.settings)],
    notRead: yield* notRead(workbook, { tables, records, history }, map, isTag),
    remarks: tableProblems(workbook, tables),
    understood: null,
  };
}
