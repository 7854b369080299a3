import { isBlank, type Cell } from '../../../../cells/cell.ts';
import { type Area, cellAt, type Sheet } from '../../../../cells/sheet.ts';

const indexes = new WeakMap<Sheet, ReadonlyMap<number, readonly Area[]>>();

/** The merged area over a cell. */
export function mergeAt(sheet: Sheet, row: number, column: number): Area | undefined {
  if (!sheet.merged) return undefined;
  let byRow = indexes.get(sheet);
  if (!byRow) indexes.set(sheet, (byRow = indexed(sheet.merged)));
  return byRow.get(row)?.find((area) => area.left <= column && area.right >= column);
}

/** Merges by row: those of many rows are few, those of headers low. */
function indexed(merges: readonly Area[]): ReadonlyMap<number, readonly Area[]> {
  const byRow = new Map<number, Area[]>();
  for (const area of merges) {
    for (let row = area.top; row <= area.bottom; row++) {
      const there = byRow.get(row);
      if (there) there.push(area);
      else byRow.set(row, [area]);
    }
  }
  return byRow;
}

/** What a reader sees at a cell: that of the merged area over it. */
export function shownAt(sheet: Sheet, row: number, column: number): Cell {
  const cell = cellAt(sheet, row, column);
  if (!isBlank(cell)) return cell;
  const merge = mergeAt(sheet, row, column);
  return merge ? cellAt(sheet, merge.top, merge.left) : cell;
}
