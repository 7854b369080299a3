import type {
  ICellData,
  IDisposable,
  IObjectMatrixPrimitiveType,
  IRange,
  IStyleData,
  Nullable,
  Workbook,
  Worksheet,
} from '@univerjs/core';
import type { FUniver } from '@univerjs/core/facade';
import type { FWorkbook } from '@univerjs/sheets/facade';
import { HostRefused } from '../port/port.ts';

/** The spreadsheet grid in the page, with the workbook that is open in it. */
export interface Grid {
  readonly api: FUniver;
  /** Whether results of everything that changed are shown. */
  readonly settled: () => boolean;
  /** Until it is disposed, everything that is done to the workbook is one step for Undo. */
  readonly oneStep: (unitId: string) => IDisposable;
  /** The cells that a formula fills beside its own, by the place of the formula. */
  readonly spillAreas: (unitId: string, sheetId: string) => IObjectMatrixPrimitiveType<Nullable<IRange>>;
  /** What formulas that fill several cells show in the cells of a sheet, which stores nothing of it. */
  readonly spilled: (unitId: string, sheetId: string) => IObjectMatrixPrimitiveType<Nullable<ICellData>>;
}

/** The open workbook as the grid's own interface shows it; refused where none is open. */
export function openBook({ api }: Grid): FWorkbook {
  const book = api.getActiveWorkbook();
  if (!book) throw new HostRefused('No workbook is open. Open one, then try again.');
  return book;
}

/** The open workbook as it is stored. */
export function storedBook(grid: Grid): Workbook {
  return openBook(grid).getWorkbook();
}

/** How a stored cell looks; `undefined` for the default. */
export function styleOf(book: Workbook, cell: Nullable<ICellData>): IStyleData | undefined {
  const s = cell ? cell.s : undefined;
  if (s === null || s === undefined) return undefined;
  return typeof s === 'string' ? (book.getStyles().get(s) ?? undefined) : s;
}

/** The sheet of that name; `undefined` where it is gone. */
export function sheetNamed(book: Workbook, name: string): Worksheet | undefined {
  return book.getSheets().find((sheet) => sheet.getName() === name);
}

/** Content of a cell that is shown, be it its own or that of a formula beside it; row and column from 0. */
export function shownContent(
  grid: Grid,
  sheet: Worksheet,
): (row: number, column: number) => Nullable<ICellData> {
  const matrix = sheet.getCellMatrix();
  const spilled = grid.spilled(sheet.getUnitId(), sheet.getSheetId());
  return (row, column) => {
    const own: Nullable<ICellData> = matrix.getValue(row, column);
    if (own && (own.f ?? own.si)) return own;
    const shown = spilled[row]?.[column];
    return shown ? { ...shown, s: (own ? own.s : undefined) ?? shown.s } : own;
  };
}
