import { cellAt } from '../../../cells/sheet.ts';
import { type Cell, isBlank } from '../../../cells/cell.ts';
import { parseUnit, type Unit } from '../../../units/parse.ts';
import { type FoundColumn } from './found.ts';
import type { HeaderMatch } from './headerRows.ts';
import { columnsOf } from './vocabulary.ts';

/**
 * The columns with units taken from a row of units right below the header: a row without a tag in which every number
 * column that is filled holds a unit, or a dash where it has none. `undefined` where the row below is no such row.
 */
export function unitRowBelow(match: HeaderMatch, lastRow: number): Map<string, FoundColumn> | undefined {
  const row = match.row + 1;
  const tag = match.columns.get('tag');
  if (row > lastRow || !tag || !isEmptyMark(cellAt(match.sheet, row, tag.column))) return undefined;
  const columns = new Map(match.columns);
  let found = false;
  for (const [id, column] of match.columns) {
    const cell = cellAt(match.sheet, row, column.column);
    const spec = columnsOf(match.kind)[id];
    if (isEmptyMark(cell) || !spec?.dimensions) continue;
    const unit = typeof cell === 'string' ? unitOfText(cell) : undefined;
    if (!unit) return undefined;
    found = true;
    columns.set(id, { ...column, unit: column.unit ?? unit });
  }
  return found ? columns : undefined;
}

/** The unit that a text is, in brackets or not. */
export function unitOfText(text: string): Unit | undefined {
  return parseUnit(text.replace(/^[[(](.*)[\])]$/u, '$1'));
}

/** Nothing, or what people write into a row of units where there is no unit. */
function isEmptyMark(cell: Cell): boolean {
  if (isBlank(cell)) return true;
  return typeof cell === 'string' && /^[[(]?\s*(?:[-–—]+|units?|uom)\s*[\])]?:?$/iu.test(cell.trim());
}
