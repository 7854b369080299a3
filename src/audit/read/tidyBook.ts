import type { Workbook } from '../../cells/sheet.ts';
import type { ColumnMap } from '../model/columnMap.ts';
import { factAt, factOf, type PlacedFact } from '../model/findings.ts';
import type { Steps } from '../model/steps.ts';
import type { ListsRead } from './bookRead.ts';
import { findHistory } from './history/historyReadings.ts';
import { earlierResults } from './join/problems.ts';
import { indexTags } from './join/tagIndex.ts';
import { findRecords } from './records/findRecords.ts';
import type { HeaderRows } from './tables/searchHeaders.ts';
import { tagKey } from './tables/tagKey.ts';
import { leftAside, machineRemarks } from './tidy/leftAside.ts';
import { tidyHistory, tidyReadings } from './tidy/tidyHistory.ts';
import type { TidyList } from './tidy/tidyList.ts';
import { tidyTables } from './tidy/tidyTables.ts';
import type { TableRead } from './understand/tables/tableRead.ts';
import type { Understanding } from './understand/understand.ts';
import { isSettled } from './unread/notRead.ts';

/** Reads a workbook by what is understood of it; `list` is made of that. `today`: day of the audit, from 1970-01-01. */
export function* tidyBook(
  workbook: Workbook,
  understanding: Understanding,
  list: TidyList,
  headerRows: HeaderRows,
  map: ColumnMap,
  today: number,
): Steps<void, ListsRead> {
  const tables = tidyTables(list);
  const [channels, settings] = [indexTags(tables.channels), indexTags(tables.settings)];
  yield;
  const isTag = (key: string): boolean => channels.hasTag(key);
  const rest = withoutLists(headerRows, understanding.tables);
  const found = yield* findRecords(workbook, tables, isTag, rest);
  const dated = yield* tidyHistory(understanding.tables, yield* findHistory(rest, tables, today), today);
  const remarks: PlacedFact[] = [];
  const machines = machinesOf(list);
  const records = { ...found, byTag: ofOneMachine(found.byTag, machines, remarks) };
  const history = { ...dated, byTag: ofOneMachine(dated.byTag, machines, remarks) };
  const aside = leftAside(understanding.notUsed);
  return {
    tables,
    index: { channels, settings },
    records,
    history,
    columns: tidyReadings(list),
    notRead: aside.notRead.filter((one) => !isSettled(one, map)),
    remarks: [
      ...earlierResults(workbook),
      ...aside.remarks,
      ...machineRemarks(understanding.tables),
      ...remarks,
    ],
    understood: { understanding, list },
  };
}

/** The rows of headers that belong to no list of channels. */
function withoutLists(headerRows: HeaderRows, tables: readonly TableRead[]): HeaderRows {
  const lists = tables.filter(({ part, leftOut }) => part === 'channels' && !leftOut);
  const isOfList = (sheet: TableRead['lane']['block']['sheet'], row: number): boolean =>
    lists.some(
      ({ lane: { block } }) =>
        block.sheet === sheet &&
        block.lies === 'rows' &&
        ((row >= block.header[0] && row <= block.header[1]) || block.repeats.has(row)),
    );
  return {
    ofTags: new Map(
      [...headerRows.ofTags].map(([sheet, rows]) => [sheet, rows.filter(({ row }) => !isOfList(sheet, row))]),
    ),
    ofRecords: new Map(
      [...headerRows.ofRecords].map(([sheet, rows]) => [sheet, rows.filter((row) => !isOfList(sheet, row))]),
    ),
  };
}

/** Machines by tag, of tags that stand on several. */
function machinesOf({ channels }: TidyList): ReadonlyMap<string, readonly string[]> {
  const found = new Map<string, string[]>();
  for (const { tag, machine, key } of channels) {
    const plain = tagKey(tag);
    if (key !== plain) found.set(plain, [...(found.get(plain) ?? []), machine]);
  }
  return found;
}

/** Records or readings without those of tags that stand on several machines, which is said. */
function ofOneMachine<
  Of extends { readonly tag: string; readonly sheet: string; readonly row: number; readonly column: string },
>(
  byTag: ReadonlyMap<string, readonly Of[]>,
  machines: ReadonlyMap<string, readonly string[]>,
  remarks: PlacedFact[],
): ReadonlyMap<string, readonly Of[]> {
  if (machines.size === 0) return byTag;
  const kept = new Map<string, readonly Of[]>();
  for (const [key, all] of byTag) {
    const several = machines.get(key);
    const [first] = all;
    if (!several) kept.set(key, all);
    else if (first) {
      const values = { tag: first.tag, machines: several };
      remarks.push(factAt(first, factOf('record-of-several-machines', 'warning', values)));
    }
  }
  return kept;
}
