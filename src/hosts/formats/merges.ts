import type { Cell } from '../../cells/cell.ts';
import type { Area } from '../../cells/sheet.ts';

/**
 * Lets merged cells read as they look. In a merge one column wide, the top cell's value stands in every row of
 * the merge (a machine's name belongs to each of its rows); in any other merge it stands in the top left cell
 * alone. What a file still stores in the covered cells is seen by nobody and dropped. Rows below the sheet's
 * last one are not made. `spend` hears of how many cells are covered, before they are made.
 */
export function applyMerges(
  rows: (readonly Cell[])[],
  merges: readonly Area[],
  spend: (count: number) => void,
): void {
  const edited = new Map<number, Cell[]>();
  for (const merge of merges) {
    const value = merge.left === merge.right ? (rows[merge.top - 1]?.[merge.left - 1] ?? null) : null;
    const bottom = Math.min(merge.bottom, rows.length);
    for (let row = merge.top; row <= bottom; row++) {
      const stored = rows[row - 1] ?? [];
      const right = value === null ? Math.min(merge.right, stored.length) : merge.right;
      spend(Math.max(1, right - merge.left + 1));
      for (let column = merge.left; column <= right; column++) {
        if (row === merge.top && column === merge.left) continue;
        if ((stored[column - 1] ?? null) === value) continue;
        const editable = edited.get(row) ?? [...stored];
        edited.set(row, editable);
        rows[row - 1] = editable;
        while (editable.length < column) editable.push(null);
        editable[column - 1] = value;
      }
    }
  }
}
