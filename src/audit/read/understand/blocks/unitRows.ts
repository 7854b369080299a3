import { cellText, isBlank, type Cell } from '../../../../cells/cell.ts';
import { type Sheet } from '../../../../cells/sheet.ts';
import { isMarkedBlank } from '../readings/cellValue.ts';
import { statedUnit } from '../vocabulary/statedUnit.ts';
import { mergeAt } from './shownCells.ts';

/** Whether a row below a header says nothing of records: units, or the numbers of its columns. */
export function isUnderHeaders(
  sheet: Sheet,
  row: number,
  columns: { readonly left: number; readonly right: number },
): boolean {
  return isUnitRow(sheet, row, columns) || isNumbering(sheet, row, columns);
}

/** Whether a row below a header is one of units: nothing or a mark under its names, and units under its numbers. */
function isUnitRow(
  sheet: Sheet,
  row: number,
  { left, right }: { readonly left: number; readonly right: number },
): boolean {
  const cells = sheet.rows[row - 1] ?? [];
  const fresh: Cell[] = [];
  for (let column = left; column <= Math.min(right, cells.length); column++) {
    const cell = cells[column - 1] ?? null;
    if (!isBlank(cell) && !isSpread(sheet, row, column)) fresh.push(cell);
  }
  const first = isSpread(sheet, row, left) ? null : (cells[left - 1] ?? null);
  if (!isBlank(first) && !isMark(first) && !(typeof first === 'string' && statedUnit(first))) return false;
  if (fresh.some((cell) => typeof cell !== 'string')) return false;
  const marks = fresh.filter(isMark).length;
  const units = fresh.filter(
    (cell) => typeof cell === 'string' && !isMark(cell) && statedUnit(cell) !== undefined,
  ).length;
  return (
    units > 0 &&
    units * 2 >= fresh.length - marks &&
    (isBlank(first) || isMark(first) || units + marks === fresh.length)
  );
}

/** Fewest columns that are numbered. */
const fewestNumbered = 4;

/** Whether a row numbers the columns below their headers: 1, 2, 3 and so on, or (1), (2), (3). */
export function isNumbering(
  sheet: Sheet,
  row: number,
  { left, right }: { readonly left: number; readonly right: number },
): boolean {
  const filled = (sheet.rows[row - 1] ?? []).slice(left - 1, right).filter((cell) => !isBlank(cell));
  return (
    filled.length >= fewestNumbered &&
    filled.length * 3 >= (right - left + 1) * 2 &&
    filled.every((cell, at) => /^\s*\(?\d{1,3}\)?\s*$/u.test(cellText(cell)) && orderIn(cell) === at + 1)
  );
}

function orderIn(cell: Cell): number {
  return Number(cellText(cell).replace(/[()\s]/gu, ''));
}

/** A mark that means no unit, in a row of units. */
function isMark(cell: Cell): boolean {
  return (
    typeof cell === 'string' &&
    (/^[[(]?\s*(?:[-–—]+|units?|uom)\s*[\])]?:?$/iu.test(cell.trim()) || isMarkedBlank(cell))
  );
}

/** Whether a cell only repeats the top of a merge one column wide. */
export function isSpread(sheet: Sheet, row: number, column: number): boolean {
  const merge = mergeAt(sheet, row, column);
  return merge !== undefined && merge.top < row;
}
