import type { Worksheet } from '@univerjs/core';
import type { EditedCell, SheetEdits } from '../../hosts/file/patch/types.ts';
import type { SheetView, ViewCell } from '../../hosts/file/view/types.ts';
import { type Grid, storedBook } from '../../hosts/grid/grid.ts';
import { sheetId } from '../open/gridWorkbook.ts';
import type { OpenedFile } from '../open/openFile.ts';
import { type CellContent, filledCells, sheetContent } from './sheetContent.ts';

/** Cells of the file's own sheets that are not what the file says, sheet by sheet. */
export function editsOf(grid: Grid, { view, added }: OpenedFile): SheetEdits[] {
  return view.sheets.flatMap((sheet, index): SheetEdits[] => {
    const stored = storedBook(grid).getSheetBySheetId(sheetId(index));
    if (added.has(index) || !stored) return [];
    const cells = cellEdits(grid, stored, sheet, view.date1904);
    return cells.length === 0 ? [] : [{ sheet: sheet.name, cells }];
  });
}

function cellEdits(grid: Grid, sheet: Worksheet, view: SheetView, date1904: boolean): EditedCell[] {
  const contentAt = sheetContent(grid, sheet, date1904);
  const edits: EditedCell[] = [];
  const seen = new Set<string>();
  const compare = (row: number, column: number, before: ViewCell | undefined): void => {
    seen.add(`${row} ${column}`);
    const content = contentAt(row - 1, column - 1);
    if (!sameContent(before, content)) edits.push({ row, column, ...content });
  };
  for (const { row, cells } of view.rows) for (const cell of cells) compare(row, cell.column, cell);
  for (const [row, column] of filledCells(grid, sheet)) {
    if (!seen.has(`${row} ${column}`)) compare(row, column, undefined);
  }
  return edits;
}

/** A formula that stands as it stood with a result that is the same to fifteen digits is no edit. */
function sameContent(before: ViewCell | undefined, now: CellContent): boolean {
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
