import type { ICellData, Nullable } from '@univerjs/core';
import type { EditedCell, SheetEdits } from '../../hosts/file/patch/types.ts';
import type { SheetView, ViewCell, WorkbookView } from '../../hosts/file/view/types.ts';
import { type Grid, shownContent, storedBook } from '../../hosts/grid/grid.ts';
import { cellContent } from './cellContent.ts';

/** Cells of the file's own sheets that are not what the file says, sheet by sheet; `isFiles` tells its sheets by id. */
export function editsOf(grid: Grid, view: WorkbookView, idOf: (index: number) => string): SheetEdits[] {
  return view.sheets.flatMap((sheet, index): SheetEdits[] => {
    const cells = cellEdits(grid, sheet, idOf(index));
    return cells.length === 0 ? [] : [{ sheet: sheet.name, cells }];
  });
}

function cellEdits(grid: Grid, view: SheetView, id: string): EditedCell[] {
  const sheet = storedBook(grid).getSheetBySheetId(id);
  if (!sheet) return [];
  const contentAt = shownContent(grid, sheet);
  const edits: EditedCell[] = [];
  const seen = new Set<string>();
  const compare = (
    row: number,
    column: number,
    before: ViewCell | undefined,
    now: Nullable<ICellData>,
  ): void => {
    const content = cellContent(now);
    if (!sameContent(before, content)) edits.push({ row, column, ...content });
  };
  for (const { row, cells } of view.rows) {
    for (const cell of cells) {
      seen.add(`${row} ${cell.column}`);
      compare(row, cell.column, cell, contentAt(row - 1, cell.column - 1));
    }
  }
  const fresh = (row: number, column: number): void => {
    if (seen.has(`${row + 1} ${column + 1}`)) return;
    seen.add(`${row + 1} ${column + 1}`);
    compare(row + 1, column + 1, undefined, contentAt(row, column));
  };
  sheet.getCellMatrix().forValue(fresh);
  for (const [row, cells] of Object.entries(grid.spilled(sheet.getUnitId(), id))) {
    for (const column of Object.keys(cells ?? {})) fresh(Number(row), Number(column));
  }
  return edits;
}

type Content = Omit<EditedCell, 'row' | 'column'>;

/** A formula that stands as it stood with a result that is the same to fifteen digits is no edit. */
function sameContent(before: ViewCell | undefined, now: Content): boolean {
  const { value = null, formula, error } = before ?? {};
  if ((formula ?? undefined) !== now.formula || error !== now.error) return false;
  const blank = (one: unknown): boolean => one === null || one === '';
  if (blank(value) && blank(now.value)) return true;
  if (typeof value === 'number' && typeof now.value === 'number') {
    return value === now.value || (formula !== undefined && close(value, now.value));
  }
  return value === now.value;
}

function close(one: number, other: number): boolean {
  return Math.abs(one - other) <= Math.abs(one) * 1e-14;
}
