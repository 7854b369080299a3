import { type Grid, shownContent, storedBook } from '../../hosts/grid/grid.ts';
import { cellReader } from '../../hosts/grid/read/cell.ts';
import { mergedRanges } from '../../hosts/grid/frame.ts';
import { tablesOf } from '../../hosts/grid/tables.ts';

/** Tells the grid's engine where the tables of a sheet lie now, so that formulas can name them. */
export function declareTables(grid: Grid, sheetId: string): void {
  const book = storedBook(grid);
  const sheet = book.getSheetBySheetId(sheetId);
  if (!sheet) return;
  const contentAt = shownContent(grid, sheet);
  const read = cellReader(() => undefined);
  for (const { name: tableName, area, headerRow } of tablesOf(sheet)) {
    const titles = Array.from({ length: headerRow ? area.right - area.left + 1 : 0 }, (_, column) => {
      const title = read(contentAt(area.top - 1, area.left - 1 + column));
      return [typeof title === 'object' ? '' : String(title), column] as const;
    });
    const [range] = mergedRanges([area]);
    grid.api.syncExecuteCommand('formula.mutation.set-super-table', {
      unitId: book.getUnitId(),
      tableName,
      reference: { sheetId, range, titleMap: new Map(titles) },
    });
  }
}
