import { columnLetters } from '../../cells/address.ts';
import type { Sheet, Workbook } from '../../cells/sheet.ts';
import type { Tables } from '../join/context.ts';
import { tagKey } from '../join/tagIndex.ts';
import type { FoundTable } from '../tables/found.ts';
import { isResultSheet } from '../tables/resultSheet.ts';
import { dynamicChecks } from './dynamicChecks.ts';
import { type LongTable, longRecords } from './longRecords.ts';
import type { RawCheck, RawRecord, RecordBook, RecordRemark } from './rawRecord.ts';
import { recordOfBlock } from './recordBlocks.ts';
import { mayHeadRecord, type RecordColumn, recordColumns, withUnitRow } from './recordHeaders.ts';

/**
 * Finds the calibration records and checks with a known vibration of a workbook, beside its two tables: long tables with
 * a tag in every row, and blocks of one probe each. Nothing here refuses an audit; what can't be used is a remark.
 * Goes step by step.
 */
export function* findRecords(
  workbook: Workbook,
  tables: Tables,
  isTag: (key: string) => boolean,
): Generator<void, RecordBook> {
  const remarks: RecordRemark[] = [];
  const byTag = new Map<string, (RawRecord | RawCheck)[]>();
  const keep = (one: RawRecord | RawCheck): void => {
    const key = tagKey(one.tag);
    const there = byTag.get(key);
    if (there) there.push(one);
    else byTag.set(key, [one]);
  };
  for (const sheet of workbook.sheets) {
    if (isResultSheet(sheet)) continue;
    const heads = yield* headsIn(sheet, tables);
    for (const [index, { row, columns }] of heads.entries()) {
      const next = heads[index + 1]?.row ?? sheet.rows.length + 1;
      const tag = columns.find(({ id }) => id === 'tag');
      if (tag) {
        const table = longTable(sheet, row, next - 1, columns);
        const found = table.columns.has('gap') ? longRecords(table, remarks) : dynamicChecks(table, remarks);
        const ofTable = yield* found;
        if (ofTable.length > 1 && ofTable.every((one) => sizeOf(one) <= 1)) remarks.push(onePointEach(table));
        else ofTable.forEach(keep);
        continue;
      }
      for (const pair of pairs(columns)) {
        const record = recordOfBlock(sheet, row, pair, isTag, remarks);
        if (record) keep(record);
      }
    }
  }
  return { byTag, remarks };
}

function sizeOf(one: RawRecord | RawCheck): number {
  return one.kind === 'record' ? one.points.length : one.levels.length;
}

/** A list of gaps of many channels has the headers of a record table, but no records. */
function onePointEach({ sheet, headerRow, columns }: LongTable): RecordRemark {
  const tag = columns.get('tag');
  return {
    rule: 'records-of-one-point',
    severity: 'note',
    message: `The table in row ${headerRow} has a gap and a voltage for each tag, but only one of each: it was not read as calibration records.`,
    sheet: sheet.name,
    row: headerRow,
    column: tag ? columnLetters(tag.column) : '',
  };
}

interface Head {
  readonly row: number;
  readonly columns: readonly RecordColumn[];
}

/** Rows that head records: with a gap beside volts, or with a tag, a known displacement and an output. */
function* headsIn(sheet: Sheet, tables: Tables): Generator<void, Head[]> {
  const heads: Head[] = [];
  const own = [tables.channels, tables.settings].filter((table) => table.sheet === sheet);
  for (const [index, cells] of sheet.rows.entries()) {
    if (index % 2_000 === 1_999) yield;
    const row = index + 1;
    const inside = own.filter((table) => row >= table.headerRow && row <= table.lastRow);
    if (!cells.some((cell, at) => typeof cell === 'string' && mayHeadRecord(cell) && !covers(inside, at + 1)))
      continue;
    const columns = recordColumns(sheet, row, 1, cells.length).filter(
      ({ column }) => !covers(inside, column),
    );
    const ids = new Set(columns.map(({ id }) => id));
    if (!ids.has('volts')) continue;
    if (ids.has('gap') || (ids.has('displacement') && ids.has('tag'))) heads.push({ row, columns });
  }
  return heads;
}

/** Whether a column lies within the columns that one of the tables uses. */
function covers(inside: readonly FoundTable[], column: number): boolean {
  return inside.some(({ columns }) => {
    let [left, right] = [Infinity, -Infinity];
    for (const one of columns.values()) {
      left = Math.min(left, one.column);
      right = Math.max(right, one.column);
    }
    return column >= left && column <= right;
  });
}

function longTable(sheet: Sheet, row: number, lastRow: number, all: readonly RecordColumn[]): LongTable {
  const { columns, firstRow } = withUnitRow(sheet, row, all);
  const first = new Map<RecordColumn['id'], RecordColumn>();
  for (const column of columns) if (!first.has(column.id)) first.set(column.id, column);
  return { sheet, headerRow: row, firstRow, lastRow, columns: first };
}

/** Each gap column with the nearest volts column to its right, before the next gap column. */
function pairs(columns: readonly RecordColumn[]): (readonly [RecordColumn, RecordColumn])[] {
  const gaps = columns.filter(({ id }) => id === 'gap');
  return gaps.flatMap((gap, index) => {
    const end = gaps[index + 1]?.column ?? Infinity;
    const volts = columns.find(
      ({ id, column }) => id === 'volts' && column > gap.column && column < end && column <= gap.column + 3,
    );
    return volts ? [[gap, volts] as const] : [];
  });
}
