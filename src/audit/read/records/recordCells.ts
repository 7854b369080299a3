import { cellText, isBlank } from '../../../cells/cell.ts';
import { factAt, factOf, type PlacedFact } from '../../model/findings.ts';
import { columnLetters } from '../../../cells/address.ts';
import { readNumber } from '../../../cells/number.ts';
import { type Sheet, cellAt } from '../../../cells/sheet.ts';
import type { RecordColumn } from '../tables/recordHeaders.ts';
import { headerKey } from '../tables/header.ts';

/** Series with a meaning; any other keeps its own name. */
export const asFound = 'as found';

export const asLeft = 'as left';

const meanings: ReadonlyMap<string, string> = new Map([
  ['asfound', asFound],
  ['found', asFound],
  ['before', asFound],
  ['asleft', asLeft],
  ['left', asLeft],
  ['after', asLeft],
]);

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

/** The name of a series; a blank one is what the table's title says. */
export function seriesOf(text: string, ofTable: string): string {
  return text === '' ? ofTable : (meanings.get(headerKey(text)) ?? text);
}
