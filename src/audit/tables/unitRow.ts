import { parseUnit } from '../../units/parse.ts';
import { cellAt, isBlank, type FoundColumn } from './found.ts';
import type { HeaderMatch } from './headerRows.ts';

/**
 * The columns with units taken from a row of units right below the header: a row without a tag in which every cell of
 * ours that is filled is a unit. `undefined` where the row below is no such row.
 */
export function unitRowBelow(match: HeaderMatch, lastRow: number): Map<string, FoundColumn> | undefined {
  const row = match.row + 1;
  const tag = match.columns.get('tag');
  if (row > lastRow || !tag || !isBlank(cellAt(match.sheet, row, tag.column))) return undefined;
  const columns = new Map(match.columns);
  let found = false;
  for (const [id, column] of match.columns) {
    const cell = cellAt(match.sheet, row, column.column);
    if (isBlank(cell)) continue;
    const unit = typeof cell === 'string' ? parseUnit(cell.replace(/^[[(](.*)[\])]$/u, '$1')) : undefined;
    if (!unit) return undefined;
    found = true;
    columns.set(id, { ...column, unit: column.unit ?? unit });
  }
  return found ? columns : undefined;
}
