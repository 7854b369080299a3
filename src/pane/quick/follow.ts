import { readNumber } from '../../cells/number.ts';
import type { Sheet } from '../../cells/sheet.ts';
import { headerAbove, labelLeft } from './labels.ts';
import { cellFields, type QuickState, type TakenCell } from './quickState.ts';

/** What stands around a cell: where it is another, rows or columns came or went, and the cell is no longer the same. */
export function surroundings(rows: Sheet['rows'], row: number, column: number): string {
  return JSON.stringify([headerAbove(rows, row, column), labelLeft(rows, row, column)]);
}

/** What the cells that fields were taken from hold now; `null` where one moved or is no number any more. */
export function followedValues(
  sheets: readonly Pick<Sheet, 'name' | 'rows'>[],
  { sources, beside }: Pick<QuickState, 'sources' | 'beside'>,
): readonly TakenCell[] | null {
  const cells: TakenCell[] = [];
  for (const field of cellFields) {
    const place = sources[field];
    if (!place) continue;
    const rows = sheets.find(({ name }) => name === place.sheet)?.rows ?? [];
    const cell = rows[place.row - 1]?.[place.column - 1] ?? null;
    const read = cell === null ? null : readNumber(cell, undefined);
    const now = surroundings(rows, place.row, place.column);
    if (!read || 'why' in read || now !== beside[field]) return null;
    cells.push({ field, place, value: read.value, beside: now });
  }
  return cells;
}
