import type { Workbook } from '../../cells/sheet.ts';
import type { ColumnMap } from '../model/columnMap.ts';
import { TablesUnclear } from '../model/refused.ts';
import type { Steps } from '../model/steps.ts';
import type { BookRead, ListsRead, NothingRead } from './bookRead.ts';
import { isCloserLook } from './route/closerLook.ts';
import { hasDoubts } from './route/doubts.ts';
import { isOutranked } from './route/outranked.ts';
import { speedSheets } from './runup/readRunUps.ts';
import { findTables } from './tables/findTables.ts';
import type { Tables } from './tables/found.ts';
import { searchHeaders, type HeaderRows } from './tables/searchHeaders.ts';
import { tidyBook } from './tidyBook.ts';
import type { TidyChannel } from './tidy/tidyList.ts';
import { tidyListOf } from './tidy/tidyListOf.ts';
import { trendSheets, withoutSheets } from './trend/findTrends.ts';
import { understand, type Understand, type Understanding } from './understand/understand.ts';
import { findHistory } from './history/historyReadings.ts';
import { tableProblems } from './join/problems.ts';
import { indexTags } from './join/tagIndex.ts';
import { findRecords } from './records/findRecords.ts';
import { columnReadings } from './tables/columnReadings.ts';
import { notRead } from './unread/notRead.ts';

/**
 * Reads a workbook: by the standard headers of its two tables, where nothing outranks them; else by all that is understood
 * of it. `today`: day of the audit, from 1970-01-01. `by` understands it.
 * @throws TablesUnclear where neither way leads anywhere.
 * @throws AuditRefused where the map names what is not there.
 */
export function* readBook(
  workbook: Workbook,
  map: ColumnMap,
  today: number,
  by: Understand = understand,
): Steps<void, BookRead | NothingRead> {
  const trends = trendSheets(workbook, map);
  const againstSpeed = speedSheets(workbook, map).filter((sheet) => !trends.includes(sheet));
  const book = yield* readLists(withoutSheets(workbook, [...trends, ...againstSpeed]), map, today, by);
  return 'refusal' in book ? book : { ...book, trends, againstSpeed };
}

/** Reads what is left without the sheets of recorded readings. */
function* readLists(
  workbook: Workbook,
  map: ColumnMap,
  today: number,
  by: Understand,
): Steps<void, ListsRead | NothingRead> {
  const headerRows = yield* searchHeaders(workbook);
  yield;
  const found = saysMore(map) ? null : standardTables(workbook, map, headerRows);
  const standard = found === null || found instanceof TablesUnclear || isOutranked(found) ? null : found;
  let book: ListsRead | null = null;
  if (standard) {
    book = yield* standardBook(workbook, standard, headerRows, map, today);
    if (!hasDoubts(standard, book.index, book.notRead)) return book;
  }
  const understanding = yield* by(workbook, map);
  const list = yield* tidyListOf(understanding, workbook.sheets);
  if (book && !isCloserLook(book, understanding, list)) return book;
  if (
    list.channels.some((channel) => isJudgeable(channel, map)) ||
    (list.channels.length > 0 && isSettledAside(found, understanding))
  )
    return yield* tidyBook(workbook, understanding, list, headerRows, map, today);
  if (found instanceof TablesUnclear && !isAsking(understanding)) throw found;
  return { understanding, refusal: found instanceof TablesUnclear ? found.message : null };
}

/** Whether a map says what no map of one channel list and one table of settings can say. */
function saysMore({ tables = [], names, cells }: ColumnMap): boolean {
  return tables.length > 0 || names !== undefined || cells !== undefined;
}

function standardTables(workbook: Workbook, map: ColumnMap, headerRows: HeaderRows): Tables | TablesUnclear {
  try {
    return findTables(workbook, map, headerRows);
  } catch (error) {
    if (error instanceof TablesUnclear) return error;
    throw error;
  }
}

/** Whether all is certain of a channel without which there is no audit; a person may say that there is no alert. */
function isJudgeable({ values }: TidyChannel, { tables = [] }: ColumnMap): boolean {
  const noAlert = tables.some(({ columns }) => columns?.['alert'] === null);
  const needed = ['measured', 'configured', 'danger', ...(noAlert ? [] : (['alert'] as const))] as const;
  return needed.every((id) => values.has(id));
}

/** Standard tables that something outranks, with nothing left to ask: what is known of their channels is reported. */
function isSettledAside(found: Tables | TablesUnclear | null, understanding: Understanding): boolean {
  return !(found instanceof TablesUnclear) && !isAsking(understanding);
}

function isAsking({ questions }: Understanding): boolean {
  return questions.some(({ needed }) => needed);
}

/** Reads a workbook whose two tables were found by their standard headers. `today`: day of the audit, from 1970-01-01. */
function* standardBook(
  workbook: Workbook,
  tables: Tables,
  headerRows: HeaderRows,
  map: ColumnMap,
  today: number,
): Steps<void, ListsRead> {
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
