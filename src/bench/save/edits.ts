import type { ICellData, Nullable, Worksheet } from '@univerjs/core';
import type { EditedCell, EditedLook, SheetEdits } from '../../hosts/file/patch/types.ts';
import type { SheetView, ViewCell, WorkbookView } from '../../hosts/file/view/types.ts';
import { type Grid, storedBook } from '../../hosts/grid/grid.ts';
import { sheetId } from '../open/gridWorkbook.ts';
import type { OpenedFile } from '../open/openFile.ts';
import { frameEdits } from './frameEdits.ts';
import { type LookReader, lookReader } from './lookEdit.ts';
import { type CellContent, filledCells, sheetContent } from './sheetContent.ts';

/** What the grid changed in the file's own sheets, and what of it cannot be saved, a sentence each. */
export interface Edits {
  readonly edits: readonly SheetEdits[];
  readonly notes: readonly string[];
}

/** Cells, looks, widths, heights and merged cells of the file's own sheets that are not what the file says, sheet by sheet. */
export function editsOf(grid: Grid, { view, added }: OpenedFile): Edits {
  const notes: string[] = [];
  const lookOf = lookReader(storedBook(grid), view.styles, fileStyles(view, added));
  const edits = view.sheets.flatMap((sheet, index): SheetEdits[] => {
    const stored = storedBook(grid).getSheetBySheetId(sheetId(index));
    if (added.has(index) || !stored) return [];
    const changed = sheetEdits(grid, stored, sheet, view.date1904, lookOf);
    const { cells, looks, isBeyond } = changed;
    if (isBeyond) {
      notes.push(
        `Sheet “${sheet.name}”: borders, turned texts and looks of single words that were set here are not in the copy.`,
      );
    }
    const frame = frameEdits(stored, sheet);
    if (cells.length === 0 && looks.length === 0 && Object.keys(frame).length === 0) return [];
    return [{ sheet: sheet.name, cells, looks, ...frame }];
  });
  return { edits, notes };
}

/** How many of the styles shown are the file's; those of sheets that only the page added stand behind them. */
function fileStyles({ styles, sheets }: WorkbookView, added: OpenedFile['added']): number {
  const used = sheets.flatMap((sheet, index) =>
    added.has(index) ? sheet.rows.flatMap(({ cells }) => cells.map(({ style }) => style)) : [],
  );
  return used.filter((style) => style > 0).reduce((least, style) => Math.min(least, style), styles.length);
}

interface ChangedSheet {
  readonly cells: readonly EditedCell[];
  readonly looks: readonly EditedLook[];
  readonly isBeyond: boolean;
}

function sheetEdits(
  grid: Grid,
  sheet: Worksheet,
  view: SheetView,
  date1904: boolean,
  lookOf: LookReader,
): ChangedSheet {
  const contentAt = sheetContent(grid, sheet, date1904);
  const matrix = sheet.getCellMatrix();
  const cells: EditedCell[] = [];
  const looks: EditedLook[] = [];
  const seen = new Set<string>();
  let isBeyond = false;
  const compare = (row: number, column: number, before: ViewCell | undefined): void => {
    seen.add(`${row} ${column}`);
    const content = contentAt(row - 1, column - 1);
    if (!sameContent(before, content)) cells.push({ row, column, ...content });
    const now: Nullable<ICellData> = matrix.getValue(row - 1, column - 1);
    const look = lookOf(before, now);
    if (look.edit) looks.push({ row, column, ...look.edit });
    isBeyond ||= look.isBeyond;
  };
  for (const { row, cells: stored } of view.rows) for (const cell of stored) compare(row, cell.column, cell);
  for (const [row, column] of filledCells(grid, sheet)) {
    if (!seen.has(`${row} ${column}`)) compare(row, column, undefined);
  }
  return { cells, looks, isBeyond };
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
