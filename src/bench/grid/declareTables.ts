import type { Injector, IRange } from '@univerjs/core';
import { IFunctionService, ISuperTableService } from '@univerjs/engine-formula';
import type { SheetTable } from '../../cells/sheet.ts';
import { type Grid, shownContent, storedBook } from '../../hosts/grid/grid.ts';
import { cellReader } from '../../hosts/grid/read/cell.ts';
import { mergedRanges } from '../../hosts/grid/frame.ts';
import { tablesOf } from '../../hosts/grid/tables.ts';
import { TitledColumns } from './titledColumns.ts';

/**
 * Tells the grid's engine where the tables of a sheet lie now, so that formulas can name them. Formulas with the name of a
 * table that is gone, or with a title that none of its columns has, show an error.
 */
export function declareTables(injector: Injector, grid: Grid, sheetId: string): void {
  const book = storedBook(grid);
  const sheet = book.getSheetBySheetId(sheetId);
  if (!sheet) return;
  const unitId = book.getUnitId();
  const tables = tablesOf(sheet);
  const before = [...(injector.get(ISuperTableService).getTableMap(unitId) ?? [])].filter(
    ([, table]) => table.sheetId === sheetId,
  );
  if (before.length === 0 && tables.length === 0) return;

  const contentAt = shownContent(grid, sheet);
  const read = cellReader(() => undefined);
  const columnsOf = ({ area, headerRow }: SheetTable): TitledColumns => {
    const columns = new TitledColumns();
    for (let column = area.left; headerRow && column <= area.right; column++) {
      const title = read(contentAt(area.top - 1, column - 1));
      if (title !== null && typeof title !== 'object') columns.set(String(title), column - area.left);
    }
    return columns;
  };
  const after = new Map(
    tables.map((table) => [table.name, { area: engineArea(table), columns: columnsOf(table) }]),
  );

  for (const [tableName] of before) {
    if (!after.has(tableName)) {
      grid.api.syncExecuteCommand('formula.mutation.remove-super-table', { unitId, tableName });
    }
  }
  for (const [tableName, { area, columns }] of after) {
    grid.api.syncExecuteCommand('formula.mutation.set-super-table', {
      unitId,
      tableName,
      reference: { sheetId, range: area, titleMap: columns },
    });
  }
  // The engine keeps each formula as it understood it at first, with the place its tables had then.
  injector.get(IFunctionService).deleteFormulaAstCacheKey(inEveryFormula);
  const lost = before.some(([name, { titleMap }]) =>
    [...titleMap.keys()].some((title) => !after.get(name)?.columns.has(title)),
  );
  // What names something that is gone depends on no cell any more, so no change of a cell would have it calculated anew.
  if (lost) grid.api.getFormula().executeCalculation();
}

/** A part of the text of every formula. */
const inEveryFormula = '';

/** The engine takes the first row of an area for the titles and all others for data, so it gets no totals row. */
function engineArea({ area, headerRow, totalsRow }: SheetTable): IRange | undefined {
  const top = headerRow ? area.top : area.top - 1;
  const bottom = totalsRow ? area.bottom - 1 : area.bottom;
  return mergedRanges([{ ...area, top, bottom }])[0];
}
