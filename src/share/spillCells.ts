import type { Area } from '../cells/sheet.ts';
import type { EditedCell } from '../hosts/file/patch/types.ts';
import type { ViewRow } from '../hosts/file/view/types.ts';
import { withoutSpillSigns } from './spillSigns.ts';

/** The cells of a sheet whose formulas name with `#` what a replaced formula filled, with the area in its place. */
export function spillCells(
  rows: readonly ViewRow[],
  sheet: string,
  filledFrom: (sheet: string, row: number, column: number) => Area | undefined,
): EditedCell[] {
  return rows.flatMap(({ row, cells }) =>
    cells.flatMap(({ column, formula, value, error, array }): EditedCell[] => {
      const now = formula === undefined ? undefined : withoutSpillSigns(formula, sheet, filledFrom);
      if (now === undefined || now === formula) return [];
      return [
        { row, column, value, formula: now, ...(error && { error }), ...(array && { array }) },
        ...restOf(rows, row, column, array),
      ];
    }),
  );
}

/** An array formula is given with the values of all the cells it fills. */
function restOf(
  rows: readonly ViewRow[],
  row: number,
  column: number,
  array: Area | undefined,
): EditedCell[] {
  if (!array) return [];
  const rest: EditedCell[] = [];
  for (let down = array.top; down <= array.bottom; down++) {
    for (let right = array.left; right <= array.right; right++) {
      if (down === row && right === column) continue;
      const cell = rows.find((one) => one.row === down)?.cells.find((one) => one.column === right);
      rest.push({
        row: down,
        column: right,
        value: cell?.value ?? null,
        ...(cell?.error && { error: cell.error }),
      });
    }
  }
  return rest;
}
