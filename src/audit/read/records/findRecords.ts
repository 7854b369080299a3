import { type LongTable, rowNames } from './rowNames.ts';
import type { Tables } from '../tables/found.ts';
import { factAt, factOf, type PlacedFact } from '../../model/findings.ts';
import { columnLetters } from '../../../cells/address.ts';
import { type Sheet, type Workbook, cellAt } from '../../../cells/sheet.ts';
import { tagKey } from '../tables/tagKey.ts';
import { isResultSheet } from '../tables/titleWords.ts';
import type { HeaderRows } from '../tables/searchHeaders.ts';
import { dynamicChecks } from './dynamicChecks.ts';
import type { RawCheck, RawRecord, RecordBook } from './rawRecord.ts';
import { recordOfBlock } from './recordBlocks.ts';
import { headsIn, type RecordHead } from './recordHeads.ts';
import { titleSeries } from './recordTitle.ts';
import { type RecordColumn, withUnitRow } from '../tables/recordHeaders.ts';
import { isBlank } from '../../../cells/cell.ts';
import { readDate } from '../rows/date.ts';
import { recordNumber } from './recordCells.ts';
import { unitOrRemark, voltsOrRemark } from './recordUnits.ts';

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

/** A head with a tag column as a table; of two columns of one kind the first counts, and the other is remarked on. */
function longTable(
  { sheet, row, lastRow, columns: all }: RecordHead,
  series: string,
  remarks: PlacedFact[],
): LongTable {
  const { columns, firstRow } = withUnitRow(sheet, row, all);
  const first = new Map<RecordColumn['id'], RecordColumn>();
  for (const column of columns) {
    const there = first.get(column.id);
    if (!there) {
      first.set(column.id, column);
      continue;
    }
    const values = {
      kind: 'second column',
      header: column.header,
      firstHeader: there.header,
      firstColumn: columnLetters(there.column),
    } as const;
    const place = { sheet: sheet.name, row, column: columnLetters(column.column) };
    remarks.push(factAt(place, factOf('record-point-left-out', 'warning', values)));
  }
  return { sheet, headerRow: row, firstRow, lastRow, columns: first, series };
}

/** The records of a long table: one for each tag, series and temperature, whatever the order of the rows. */
function* longRecords(table: LongTable, remarks: PlacedFact[]): Generator<void, RawRecord[], void> {
  const { sheet, headerRow, columns } = table;
  const [tag, gap, volts] = [columns.get('tag'), columns.get('gap'), columns.get('volts')];
  if (!tag || !gap || !volts) return [];
  const gapUnit = unitOrRemark(sheet, headerRow, gap, remarks);
  const toVolts = volts.unit ? volts.unit.factor : 1;
  if (!gapUnit) return [];
  const found = new Map<string, RawRecord>();
  for (const name of rowNames(table, tag, [gap, volts], remarks)) {
    if (!name) {
      yield;
      continue;
    }
    const { row, key, ...named } = name;
    let record = found.get(key);
    if (!record) {
      record = {
        kind: 'record',
        ...named,
        takenOn: dayOf(sheet, row, columns.get('takenOn')),
        gapUnit,
        points: [],
        remarks: [],
        sheet: sheet.name,
        row,
        column: columnLetters(gap.column),
      };
      found.set(key, record);
    }
    const at = recordNumber(sheet, row, gap, record.remarks);
    const read = recordNumber(sheet, row, volts, record.remarks);
    if (at !== null && read !== null) record.points.push({ row, gap: at, volts: read * toVolts });
  }
  return voltsOrRemark(sheet, headerRow, volts, [...found.values()], remarks);
}

function dayOf(sheet: Sheet, row: number, column: RecordColumn | undefined): number | null {
  const cell = column ? cellAt(sheet, row, column.column) : null;
  if (cell === null || isBlank(cell)) return null;
  const read = readDate(cell);
  return 'day' in read ? read.day : null;
}
