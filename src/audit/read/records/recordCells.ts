import { cellText, isBlank } from '../../../cells/cell.ts';
import { factAt, factOf, type PlacedFact } from '../../model/findings.ts';
import { columnLetters } from '../../../cells/address.ts';
import { readNumber } from '../../../cells/number.ts';
import { type Sheet, cellAt } from '../../../cells/sheet.ts';
import type { RecordColumn } from '../tables/recordHeaders.ts';

/** The number of a cell; `null`, with a remark, where it is none: the point is then left out. */
export function recordNumber(
  sheet: Sheet,
  row: number,
  { column, header }: RecordColumn,
  remarks: PlacedFact[],
): number | null {
  const cell = cellAt(sheet, row, column);
  const read =
    cell === null || isBlank(cell) ? ({ why: 'blank' } as const) : readNumber(cell, sheet.plainText);
  if (!('why' in read) && !read.percent) return read.value;
  const why = 'why' in read ? read.why : 'percentage';
  const values = { kind: 'cell', header, cell: cellText(cell), why } as const;
  const place = { sheet: sheet.name, row, column: columnLetters(column) };
  remarks.push(factAt(place, factOf('record-point-left-out', 'warning', values)));
  return null;
}

/** The text of a cell of an optional column; empty where there is no such column. */
export function recordText(sheet: Sheet, row: number, column: RecordColumn | undefined): string {
  return column
    ? cellText(cellAt(sheet, row, column.column))
        .replace(/\s+/gu, ' ')
        .slice(0, 60)
    : '';
}
