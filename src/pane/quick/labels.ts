import { type Cell, isBlank } from '../../cells/cell.ts';
import type { Sheet } from '../../cells/sheet.ts';
import { statedUnit } from '../../audit/read/understand/vocabulary/statedUnit.ts';

/** Most rows or columns between a number and its header. */
const farthest = 5_000;

function textAt(rows: Sheet['rows'], row: number, column: number): string | null {
  const cell: Cell = rows[row - 1]?.[column - 1] ?? null;
  return typeof cell === 'string' && !isBlank(cell) ? cell.trim() : null;
}

/** The header above a cell, with the unit that stands in a cell of its own below it; `null` where there is none. */
export function headerAbove(rows: Sheet['rows'], row: number, column: number): string | null {
  return nearest(row - 1, (at) => textAt(rows, at, column));
}

/** The label left of a cell, with a unit that stands in a cell of its own between them or to the right. */
export function labelLeft(rows: Sheet['rows'], row: number, column: number): string | null {
  const label = nearest(column - 1, (at) => textAt(rows, row, at));
  const right = textAt(rows, row, column + 1);
  return label !== null && right !== null && statedUnit(right) ? `${label} (${right})` : label;
}

/** The first text on the way from a place to 1. A unit alone, or a mark in a column of numbers, is passed over. */
function nearest(from: number, text: (at: number) => string | null): string | null {
  let unit = '';
  for (let at = from; at >= Math.max(1, from - farthest); at--) {
    const found = text(at);
    if (found === null) continue;
    if (unit === '' && statedUnit(found)) unit = found.replace(/^[[(]|[\])]$/gu, '');
    else return unit === '' ? found : `${found} (${unit})`;
  }
  return null;
}
