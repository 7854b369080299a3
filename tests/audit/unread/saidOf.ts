import { findHistory } from '../../../src/audit/read/history/historyReadings.ts';
import { indexTags } from '../../../src/audit/read/join/tagIndex.ts';
import { findRecords } from '../../../src/audit/read/records/findRecords.ts';
import { findTables } from '../../../src/audit/read/tables/findTables.ts';
import { searchHeaders } from '../../../src/audit/read/tables/searchHeaders.ts';
import { notRead } from '../../../src/audit/read/unread/notRead.ts';
import type { NotRead } from '../../../src/audit/model/attention.ts';
import type { ColumnMap } from '../../../src/audit/model/columnMap.ts';
import { finish } from '../../../src/audit/model/steps.ts';
import type { Workbook } from '../../../src/cells/sheet.ts';

/** What was not read of a workbook whose two tables have standard headers. */
function unreadOf(workbook: Workbook, map: ColumnMap = {}): NotRead[] {
  const headerRows = finish(searchHeaders(workbook));
  const tables = findTables(workbook, map, headerRows);
  const channels = indexTags(tables.channels);
  const isTag = (key: string): boolean => channels.hasTag(key);
  const records = finish(findRecords(workbook, tables, isTag, headerRows));
  const history = finish(findHistory(headerRows, tables, 20_000));
  return finish(notRead(workbook, { tables, records, history }, map, isTag));
}

/** The same in a line each: `critical column full scale @ Monitor!E1: Full scael (mil)`. */
export function saidOf(workbook: Workbook, map?: ColumnMap): string[] {
  return unreadOf(workbook, map).map(
    ({ severity, what, looksLike, sheet, column, row, text }) =>
      `${severity} ${what} ${looksLike} @ ${sheet}!${column}${row}: ${text}`,
  );
}
