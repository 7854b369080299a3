import { isBlank } from '../../../cells/cell.ts';
import { readNumber } from '../../../cells/number.ts';
import { type Sheet, cellAt } from '../../../cells/sheet.ts';
import { type FoundTable, stretchesOf, type Tables } from '../tables/found.ts';
import type { RecordColumn } from '../tables/recordHeaders.ts';
import { isUnbroken, recordParts, spanOf } from '../tables/recordParts.ts';
import { titleReach } from '../tables/titleWords.ts';

/** The headers of one table of records or of the block of one probe, with the rows that can belong to it. */
export interface RecordHead {
  readonly sheet: Sheet;
  readonly row: number;
  readonly lastRow: number;
  /** First row above it in which its title may stand. */
  readonly titlesFrom: number;
  /** With a tag column a long table; otherwise a block, a gap column and its volts column. */
  readonly columns: readonly RecordColumn[];
  readonly left: number;
  readonly right: number;
  /** Whether it goes on from the headers of the channel list or the settings, without a blank column between. */
  readonly besideTable: boolean;
}

/** Every head on a sheet in the rows that may hold one; tables beside each other are told apart, and each ends where the next below it begins. */
export function* headsIn(
  sheet: Sheet,
  tables: Tables,
  rows: readonly number[],
): Generator<void, RecordHead[], void> {
  const own = [tables.channels, tables.settings].filter((table) => table.sheet === sheet).flatMap(extentsOf);
  const heads: RecordHead[] = [];
  for (const [done, row] of rows.entries()) {
    if (done % 2_000 === 1_999) yield;
    const inside = own.filter(({ top, bottom }) => row >= top && row <= bottom);
    const isFree = (at: number): boolean => !inside.some(({ left, right }) => at >= left && at <= right);
    for (const columns of recordParts(sheet, row, isFree)) {
      const { left, right } = spanOf(columns);
      const titlesFrom = firstTitleRow(sheet, row, left, right, own);
      const besideTable = inside.some((table) => table.top === row && joined(sheet, row, table, left, right));
      heads.push({ sheet, row, lastRow: sheet.rows.length, titlesFrom, columns, left, right, besideTable });
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

/** The stretches of rows of a table with the columns that it uses. */
function extentsOf(table: FoundTable): Extent[] {
  const span = spanOf(table.columns.values());
  return stretchesOf(table).map((rows) => ({ ...rows, ...span }));
}

/** Rows of the channel list or the settings right above are no title, but for a text alone in its row. */
function firstTitleRow(
  sheet: Sheet,
  row: number,
  left: number,
  right: number,
  own: readonly Extent[],
): number {
  const first = Math.max(1, row - titleReach);
  for (let above = row - 1; above >= first; above--) {
    const table = own.find(
      (one) => above >= one.top && above <= one.bottom && one.left <= right && one.right >= left,
    );
    if (!table) continue;
    const cells = sheet.rows[above - 1]?.slice(table.left - 1, table.right) ?? [];
    if (cells.filter((cell) => !isBlank(cell)).length > 1) return above + 1;
  }
  return first;
}

/** Whether no header cell between a table and these columns is blank. */
function joined(sheet: Sheet, row: number, table: Extent, left: number, right: number): boolean {
  return left > table.right
    ? isUnbroken(sheet, row, table.right, left)
    : isUnbroken(sheet, row, right, table.left);
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
