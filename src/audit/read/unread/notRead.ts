import { columnLetters, columnNumber } from '../../../cells/address.ts';
import type { Workbook } from '../../../cells/sheet.ts';
import type { NotRead } from '../../model/attention.ts';
import type { ColumnMap } from '../../model/columnMap.ts';
import type { HistoryBook } from '../history/reading.ts';
import type { RecordBook } from '../records/rawRecord.ts';
import { isSameTable, type Tables } from '../tables/found.ts';
import { headerKey } from '../tables/header.ts';
import { unreadAreas, type ReadRows } from './unreadAreas.ts';
import { unreadColumns } from './unreadColumns.ts';
import { unreadRows } from './unreadRows.ts';

/** What of a workbook was read, to tell what was not. */
export interface ReadParts {
  readonly tables: Tables;
  readonly records: RecordBook;
  readonly history: HistoryBook;
}

/**
 * Everything that looks like a part of the audit and was not read, but for what a person has said is none. Nothing that may
 * bear on a danger is passed over without a word.
 */
export function* notRead(
  workbook: Workbook,
  { tables, records, history }: ReadParts,
  map: ColumnMap,
  isTag: (key: string) => boolean,
): Generator<void, NotRead[], void> {
  const { channels, settings } = tables;
  const ofOneTable = isSameTable(channels, settings);
  const columns = ofOneTable
    ? unreadColumns({ ...channels, unread: unreadByBoth(tables) })
    : [...unreadColumns(channels), ...unreadColumns(settings)];
  const rows = [...unreadRows(channels), ...(ofOneTable ? [] : unreadRows(settings))];
  const areas = yield* unreadAreas(workbook, tables, isTag, rowsRead(records, history));
  return [...areas, ...columns, ...rows].filter((one) => !isSettled(one, map));
}

/** Headers of a table that is both kinds which neither reading of it uses. */
function unreadByBoth({ channels, settings }: Tables) {
  const used = new Set([...settings.columns.values(), ...settings.unitColumns].map(({ column }) => column));
  return channels.unread.filter(({ column }) => !used.has(column));
}

function rowsRead(records: RecordBook, history: HistoryBook): ReadRows {
  const read = new Map<string, Set<number>>();
  const remarked = new Map<string, Set<number>>();
  const add = (sheet: string, row: number, rows = read): void => {
    const there = rows.get(sheet);
    if (there) there.add(row);
    else rows.set(sheet, new Set([row]));
  };
  for (const one of [...records.byTag.values()].flat()) {
    add(one.sheet, one.row);
    for (const { row } of one.kind === 'record' ? one.points : one.levels) add(one.sheet, row);
    for (const { sheet, row } of one.remarks) add(sheet, row);
  }
  for (const { sheet, row } of [...history.byTag.values()].flat()) add(sheet, row);
  for (const { sheet, row } of [...records.remarks, ...history.remarks]) {
    add(sheet, row);
    add(sheet, row, remarked);
  }
  return { read, remarked };
}

/** Whether a person has said that this is no part of the audit. */
export function isSettled(
  { what, sheet, row, column, text }: NotRead,
  { notOfAudit = [] }: ColumnMap,
): boolean {
  return notOfAudit.some((said) => {
    if (said.sheet.toLowerCase() !== sheet.toLowerCase()) return false;
    if (said.row !== undefined) return what !== 'column' && said.row === row;
    if (said.column === undefined) return true;
    if (what !== 'column') return false;
    const number = columnNumber(said.column);
    const letters = Number.isNaN(number) ? '' : columnLetters(number);
    return letters === column || headerKey(said.column) === headerKey(text);
  });
}
