import { cellAddress } from '../../src/cells/address.ts';
import type { Workbook } from '../../src/cells/sheet.ts';
import type { ModelCell, ModelRow, ModelValue, SheetModel } from '../../src/sheets/model.ts';
import { plain } from './workbookFiles.ts';

/** Rows of a sheet. */
export function cellsOf(book: Workbook, name: string) {
  const sheet = book.sheets.find((entry) => entry.name === name);
  if (!sheet) throw new Error(`no sheet ${name}`);
  return sheet.rows;
}

/** Whether two numbers agree to `digits`, relative; differences of levels to 1e-14 of `largest`, the largest of them. */
function agree(found: number, wanted: number, largest: number, digits: number): boolean {
  return Math.abs(found - wanted) <= Math.max(digits * Math.abs(wanted), 1e-14 * largest);
}

/** Differences between what every formula cell gives in another program and what the audit stored beside it; counts them. */
export function compare(
  models: readonly SheetModel[],
  book: Workbook,
  digits = 1e-12,
): { formulas: number; differences: string[] } {
  let formulas = 0;
  const differences: string[] = [];
  for (const model of models) {
    const rows = cellsOf(book, model.name);
    [...model.rows()].forEach((row, rowIndex) => {
      const largest = Math.max(
        0,
        ...row.cells.map((cell) =>
          cell?.formula !== undefined && typeof cell.value === 'number' ? Math.abs(cell.value) : 0,
        ),
      );
      row.cells.forEach((cell, column) => {
        if (cell?.formula === undefined) return;
        formulas++;
        const found = plain(rows[rowIndex]?.[column]);
        const wanted = cell.value === '' ? null : cell.value;
        const same =
          typeof found === 'number' && typeof wanted === 'number'
            ? agree(found, wanted, largest, digits)
            : found === wanted;
        if (!same) {
          differences.push(
            `${model.name} ${cellAddress(rowIndex + 1, column + 1)}: ${String(found)} instead of ${String(wanted)}`,
          );
        }
      });
    });
  }
  return { formulas, differences };
}

/** The sheet with some cells holding other values: what a reader would type over. */
export function typedOver(
  model: SheetModel,
  change: (cell: ModelCell, row: number, column: number) => ModelValue,
): SheetModel {
  return {
    ...model,
    *rows(): Generator<ModelRow> {
      let number = 0;
      for (const row of model.rows()) {
        number++;
        const at = number;
        yield {
          ...row,
          cells: row.cells.map((cell, index) => cell && { ...cell, value: change(cell, at, index + 1) }),
        };
      }
    },
  };
}
