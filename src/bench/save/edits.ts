import { type ICellData, type Nullable, type Worksheet, BooleanNumber, type IRowData } from '@univerjs/core';
import type {
  EditedCell,
  StyleEdit,
  SheetEdits,
  EditedColumns,
  EditedRow,
} from '../../hosts/file/patch/types.ts';
import type { SheetView, ViewCell, WorkbookView } from '../../hosts/file/view/types.ts';
import { type Grid, storedBook } from '../../hosts/grid/grid.ts';
import { sheetId } from '../open/gridWorkbook.ts';
import type { OpenedFile } from '../open/openFile.ts';
import { type StyleComparer, styleComparer } from './styleEdit.ts';
import { type CellContent, filledCells, sheetContent } from './sheetContent.ts';
import type { Area } from '../../cells/sheet.ts';
import { reference } from '../../hosts/formats/reference.ts';
import { areaOf } from '../../hosts/grid/read/readWorkbook.ts';
import { markedColumns, markedRows, originOf } from './origins.ts';

/** What the grid changed in the file's own sheets, and what of it cannot be saved, a sentence each. */
export interface Edits {
  readonly edits: readonly SheetEdits[];
  readonly notes: readonly string[];
}

/** Cells, looks, widths, heights and merged cells of the file's own sheets that are not what the file says, sheet by sheet. */
export function editsOf(grid: Grid, { view, added }: OpenedFile): Edits {
  const notes: string[] = [];
  const styleOfEdit = styleComparer(storedBook(grid), view.styles, fileStyles(view, added));
  const edits = view.sheets.flatMap((sheet, index): SheetEdits[] => {
    const stored = storedBook(grid).getSheetBySheetId(sheetId(index));
    if (added.has(index) || !stored) return [];
    const changed = sheetEdits(grid, stored, sheet, view.date1904, styleOfEdit);
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
  readonly looks: readonly StyleEdit[];
  readonly isBeyond: boolean;
}

function sheetEdits(
  grid: Grid,
  sheet: Worksheet,
  view: SheetView,
  date1904: boolean,
  lookOf: StyleComparer,
): ChangedSheet {
  const contentAt = sheetContent(grid, sheet, date1904);
  const matrix = sheet.getCellMatrix();
  const cells: EditedCell[] = [];
  const looks: StyleEdit[] = [];
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

/** Widths, heights and merged cells of a sheet that are not as they were when it was opened. */
function frameEdits(sheet: Worksheet, view: SheetView): Pick<SheetEdits, 'columns' | 'rows' | 'merges'> {
  const columns = columnEdits(sheet);
  const rows = rowEdits(sheet);
  const merges = sheet.getMergeData().map(areaOf);
  return {
    ...(columns.length > 0 && { columns }),
    ...(rows.length > 0 && { rows }),
    ...(!sameAreas(merges, view.merges) && { merges }),
  };
}

function columnEdits(sheet: Worksheet): EditedColumns[] {
  return markedColumns(sheet).flatMap(([column, { w: width, hd }]) => {
    const origin = originOf(sheet.getConfig().columnData[column]);
    const hidden = hd === BooleanNumber.TRUE;
    if (width === origin?.size && hidden === (origin?.hidden === BooleanNumber.TRUE)) return [];
    return [{ first: column + 1, last: column + 1, width: digitsOf(sheet.getColumnWidth(column)), hidden }];
  });
}

/** Width as files store it, from pixels, so that it gives as many pixels again (ECMA-376 part 1, section 18.3.1.13). */
function digitsOf(pixels: number): number {
  return Math.trunc((Math.round(pixels) / 7) * 256) / 256;
}

function rowEdits(sheet: Worksheet): EditedRow[] {
  const usual = sheet.getConfig().defaultRowHeight;
  return markedRows(sheet).flatMap(([row, data]): EditedRow[] => {
    const origin = originOf(data);
    const pixels = shownHeight(data);
    const changed = pixels !== undefined && pixels !== (origin ? origin.size : usual);
    const height = changed ? (pixels * 72) / 96 : undefined;
    const hidden = data.hd === BooleanNumber.TRUE;
    const hiding = hidden !== (origin?.hidden === BooleanNumber.TRUE);
    if (height === undefined && !hiding) return [];
    return [{ row: row + 1, ...(height !== undefined && { height }), ...(hiding && { hidden }) }];
  });
}

/** A row's height that somebody gave it; `undefined` where the grid fits it to its cells by itself. */
function shownHeight({ h: given, ah: fitted, ia: fits, ...row }: Partial<IRowData>): number | undefined {
  if (fits === BooleanNumber.FALSE) return given;
  return originOf(row)?.size === undefined ? given : (fitted ?? given);
}

/** Whether merged areas are the same, in any order. */
function sameAreas(some: readonly Area[], others: readonly Area[]): boolean {
  const names = new Set(others.map(reference));
  return some.length === others.length && some.every((area) => names.has(reference(area)));
}
