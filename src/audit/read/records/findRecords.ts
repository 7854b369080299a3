import type { LongTable } from './rowNames.ts';
import type { Tables } from '../tables/found.ts';
import { factAt, factOf, type PlacedFact } from '../../model/findings.ts';
import { columnLetters } from '../../../cells/address.ts';
import type { Sheet, Workbook } from '../../../cells/sheet.ts';
import { tagKey } from '../tables/tagKey.ts';
import { isResultSheet } from '../tables/resultSheet.ts';
import type { HeaderRows } from '../tables/searchHeaders.ts';
import { dynamicChecks } from './dynamicChecks.ts';
import { longRecords } from './longRecords.ts';
import { longTable } from './longTable.ts';
import type { RawCheck, RawRecord, RecordBook } from './rawRecord.ts';
import { recordOfBlock } from './recordBlocks.ts';
import { headsIn, type RecordHead } from './recordHeads.ts';
import { titleSeries } from './recordTitle.ts';

/**
 * Finds the calibration records and checks with a known vibration of a workbook, beside its two tables: long tables with
 * a tag in every row, and blocks of one probe each. Nothing here refuses an audit; what can't be used is a remark.
 * Goes step by step.
 */
export function* findRecords(
  workbook: Workbook,
  tables: Tables,
  isTag: (key: string) => boolean,
  { ofRecords }: HeaderRows,
): Generator<void, RecordBook, void> {
  const remarks: PlacedFact[] = [];
  const byTag = new Map<string, (RawRecord | RawCheck)[]>();
  for (const sheet of workbook.sheets) {
    if (isResultSheet(sheet)) continue;
    const heads = yield* headsIn(sheet, tables, ofRecords.get(sheet) ?? []);
    const onSheet: (RawRecord | RawCheck)[] = [];
    for (const head of heads) {
      if (head.columns.some(({ id }) => id === 'tag')) {
        onSheet.push(...(yield* ofTable(longTable(head, titleSeries(head, heads), remarks), remarks)));
      } else {
        const record = recordOfBlock(head, heads, isTag, remarks);
        if (record) onSheet.push(record);
      }
    }
    for (const one of onSheet) {
      const key = tagKey(one.tag);
      const there = byTag.get(key);
      if (there) there.push(one);
      else byTag.set(key, [one]);
    }
    const [head] = heads;
    if (head && onSheet.length > 0) hidden(sheet, head, remarks);
  }
  return { byTag, remarks };
}

function* ofTable(
  table: LongTable,
  remarks: PlacedFact[],
): Generator<void, readonly (RawRecord | RawCheck)[], void> {
  if (!table.columns.has('gap')) return yield* dynamicChecks(table, remarks);
  const found = yield* longRecords(table, remarks);
  if (found.length < 2 || found.some(({ points }) => points.length > 1)) return found;
  remarks.push(onePointEach(table));
  return [];
}

/** A list of gaps of many channels has the headers of a record table, but no records. */
function onePointEach({ sheet, headerRow, columns }: LongTable): PlacedFact {
  const tag = columns.get('tag');
  const place = { sheet: sheet.name, row: headerRow, column: tag ? columnLetters(tag.column) : '' };
  return factAt(place, factOf('records-of-one-point', 'note', { headerRow }));
}

/** Records that nobody sees count all the same, and that is said. */
function hidden(sheet: Sheet, { row, left }: RecordHead, remarks: PlacedFact[]): void {
  if (!sheet.hidden) return;
  const values = { sheet: sheet.name, holds: 'calibration records' } as const;
  const place = { sheet: sheet.name, row, column: columnLetters(left) };
  remarks.push(factAt(place, factOf('hidden-sheet', 'note', values)));
}
