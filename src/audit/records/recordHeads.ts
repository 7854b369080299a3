import type { Sheet } from '../../cells/sheet.ts';
import type { Tables } from '../join/context.ts';
import { readNumber } from '../rows/number.ts';
import { cellAt, isBlank, type FoundTable } from '../tables/found.ts';
import { mayHeadRecord, type RecordColumn, recordColumns } from './recordHeaders.ts';

/** The headers of one table of records or of the block of one probe, with the rows that can belong to it. */
export interface RecordHead {
  readonly sheet: Sheet;
  readonly row: number;
  readonly lastRow: number;
  /** With a tag column a long table; otherwise a block, a gap column and its volts column. */
  readonly columns: readonly RecordColumn[];
  readonly left: number;
  readonly right: number;
  /** Whether it goes on from the headers of the channel list or the settings, without a blank column between. */
  readonly besideTable: boolean;
}

/** Every head on a sheet; tables beside each other are told apart, and each ends where the next below it begins. */
export function* headsIn(sheet: Sheet, tables: Tables): Generator<void, RecordHead[], void> {
  const own = [tables.channels, tables.settings].filter((table) => table.sheet === sheet).map(extentOf);
  const heads: RecordHead[] = [];
  for (const [index, cells] of sheet.rows.entries()) {
    if (index % 2_000 === 1_999) yield;
    const row = index + 1;
    const inside = own.filter(({ top, bottom }) => row >= top && row <= bottom);
    const covered = (at: number): boolean => inside.some(({ left, right }) => at >= left && at <= right);
    if (!cells.some((cell, at) => typeof cell === 'string' && mayHeadRecord(cell) && !covered(at + 1)))
      continue;
    const columns = recordColumns(sheet, row, 1, cells.length).filter(({ column }) => !covered(column));
    for (const part of partsOf(sheet, row, columns)) {
      const { left, right } = spanOf(part);
      const besideTable = inside.some((table) => table.top === row && joined(sheet, row, table, left, right));
      heads.push({ sheet, row, lastRow: sheet.rows.length, columns: part, left, right, besideTable });
    }
  }
  return withEnds(heads, own);
}

interface Extent {
  readonly top: number;
  readonly bottom: number;
  readonly left: number;
  readonly right: number;
}

/** The rows of a table and the columns that it uses. */
function extentOf({ headerRow, lastRow, columns }: FoundTable): Extent {
  return { top: headerRow, bottom: lastRow, ...spanOf([...columns.values()]) };
}

function spanOf(columns: readonly { readonly column: number }[]): { left: number; right: number } {
  let [left, right] = [Infinity, -Infinity];
  for (const { column } of columns) [left, right] = [Math.min(left, column), Math.max(right, column)];
  return { left, right };
}

/** Whether no header cell between a table and these columns is blank. */
function joined(sheet: Sheet, row: number, table: Extent, left: number, right: number): boolean {
  const [from, to] = left > table.right ? [table.right, left] : [right, table.left];
  for (let column = from; column <= to; column++) if (isBlank(cellAt(sheet, row, column))) return false;
  return true;
}

/** Row by row from below: what lies under a head in its columns ends it. */
function withEnds(heads: readonly RecordHead[], own: readonly Extent[]): RecordHead[] {
  const below: { readonly top: number; readonly left: number; readonly right: number }[] = [...own];
  const ended: RecordHead[] = [];
  for (const head of heads.toReversed()) {
    let lastRow = head.lastRow;
    for (const { top, left, right } of below) {
      if (top > head.row && top <= lastRow && left <= head.right && right >= head.left) lastRow = top - 1;
    }
    ended.push({ ...head, lastRow: withoutTitle(head, lastRow) });
    below.push({ top: head.row, left: head.left, right: head.right });
  }
  return ended.toReversed();
}

/** Rows of titles above the next table that are looked over. */
const titles = 4;

/** The last row without the title of what begins right below it. */
function withoutTitle({ sheet, row, columns }: RecordHead, lastRow: number): number {
  if (lastRow === sheet.rows.length) return lastRow;
  const numbers = columns.filter(({ id }) => id === 'gap' || id === 'volts' || id === 'displacement');
  let last = lastRow;
  while (last > Math.max(row, lastRow - titles) && numbers.every(({ column }) => isWord(sheet, last, column)))
    last--;
  return last;
}

function isWord(sheet: Sheet, row: number, column: number): boolean {
  const cell = cellAt(sheet, row, column);
  return cell === null || (typeof cell === 'string' && 'why' in readNumber(cell, sheet.plainText));
}

/** The tables of one row of headers: one, or, where a header comes twice, the stretches between blank cells. */
function partsOf(sheet: Sheet, row: number, columns: readonly RecordColumn[]): RecordColumn[][] {
  const ids = columns.map(({ id }) => id);
  if (!ids.includes('volts')) return [];
  const twice = (['tag', 'gap', 'displacement', 'volts'] as const).some(
    (id) => ids.indexOf(id) !== ids.lastIndexOf(id),
  );
  const stretches = twice && ids.includes('tag') ? stretchesOf(sheet, row, columns) : [[...columns]];
  return stretches.flatMap((stretch) => {
    const has = new Set(stretch.map(({ id }) => id));
    if (!has.has('volts')) return [];
    if (has.has('tag')) return has.has('gap') || has.has('displacement') ? [stretch] : [];
    return pairs(stretch);
  });
}

function stretchesOf(sheet: Sheet, row: number, columns: readonly RecordColumn[]): RecordColumn[][] {
  const stretches: RecordColumn[][] = [];
  let before: RecordColumn | undefined;
  for (const column of columns) {
    const at = { top: row, bottom: row, left: before?.column ?? 0, right: before?.column ?? 0 };
    const goesOn = before && joined(sheet, row, at, column.column, column.column);
    if (goesOn) stretches.at(-1)?.push(column);
    else stretches.push([column]);
    before = column;
  }
  return stretches;
}

/** Each gap column with the nearest volts column to its right, before the next gap column. */
function pairs(columns: readonly RecordColumn[]): RecordColumn[][] {
  const gaps = columns.filter(({ id }) => id === 'gap');
  return gaps.flatMap((gap, index) => {
    const end = gaps[index + 1]?.column ?? Infinity;
    const volts = columns.find(
      ({ id, column }) => id === 'volts' && column > gap.column && column < end && column <= gap.column + 3,
    );
    return volts ? [[gap, volts]] : [];
  });
}
