import { sheetId } from '../open/gridWorkbook.ts';
import type { WorkbookView } from '../../hosts/file/view/types.ts';
import { type Grid, openBook } from '../../hosts/grid/grid.ts';

/** Gives the grid the workbook's defined names and tables, so that formulas that use them can be calculated anew. */
export function defineNames(grid: Grid, view: WorkbookView): void {
  const book = openBook(grid);
  for (const { name, sheet, refersTo } of view.names) {
    if (sheet === undefined && !name.startsWith('_xlnm.')) book.insertDefinedName(name, refersTo);
  }
  view.sheets.forEach((sheet, index) => {
    for (const { name, area, headerRow } of sheet.tables) {
      const header = headerRow ? sheet.rows.find(({ row }) => row === area.top)?.cells : undefined;
      const titles = (header ?? []).flatMap(({ column, value }): [string, number][] =>
        column >= area.left && column <= area.right ? [[String(value), column - area.left]] : [],
      );
      grid.api.syncExecuteCommand('formula.mutation.set-super-table', {
        unitId: book.getId(),
        tableName: name,
        reference: {
          sheetId: sheetId(index),
          range: {
            startRow: area.top - 1,
            startColumn: area.left - 1,
            endRow: area.bottom - 1,
            endColumn: area.right - 1,
          },
          titleMap: new Map(titles),
        },
      });
    }
  });
}
