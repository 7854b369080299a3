import { BooleanNumber, type IRange, type Worksheet } from '@univerjs/core';
import type { FWorkbook } from '@univerjs/sheets/facade';
import { cellAddress } from '../../cells/address.ts';
import type { Cell } from '../../cells/cell.ts';
import { type CellPlace, HostRefused, type Selection } from '../port/port.ts';
import { type Grid, openBook, sheetNamed, shownContent, styleOf } from './grid.ts';
import { cellReader } from './read/cell.ts';
import { areaOf } from './read/readWorkbook.ts';

/** Cells of a selection that are handed over. */
const mostCells = 1_000;

/** The selected area and its first cells, whole rows of them; the first cell of the sheet where nothing is selected. */
export function readSelection(grid: Grid): Selection {
  const book = openBook(grid);
  const sheet = book.getActiveSheet();
  const selected = sheet.getSelection()?.getActiveRange()?.getRange();
  const area = areaOf(selected ?? { startRow: 0, startColumn: 0, endRow: 0, endColumn: 0 });
  const right = Math.min(area.right, area.left + mostCells - 1);
  const rows = Math.min(area.bottom - area.top + 1, Math.floor(mostCells / (right - area.left + 1)));
  const stored = book.getWorkbook();
  const cellOf = cellReader((cell) => styleOf(stored, cell)?.n?.pattern);
  const contentAt = shownContent(grid, sheet.getSheet());
  const cells = Array.from({ length: rows }, (_, row) =>
    Array.from({ length: right - area.left + 1 }, (__, column): Cell =>
      cellOf(contentAt(area.top - 1 + row, area.left - 1 + column)),
    ),
  );
  return { sheet: sheet.getSheetName(), area, cells };
}

/**
 * Brings a sheet to the front and selects cells of one row; refused where the sheet is gone or hidden. Where some of them
 * are merged with other rows, such as a machine's name beside all of its channels, the most cells side by side that
 * belong to this row alone are selected: the grid would mark all rows of a merged cell.
 */
export function selectRow(grid: Grid, name: string, row: number, fromColumn: number, toColumn: number): void {
  const book = openBook(grid);
  const sheet = shownSheet(grid, name, cellAddress(row, fromColumn));
  const front = book.setActiveSheet(sheet.getSheetId());
  const [first, last] = ownColumns(sheet, row, fromColumn, toColumn);
  book.setActiveRange(front.getRange(row - 1, first - 1, 1, last - first + 1));
  scrollTo(front, row, fromColumn);
}

/** The sheet of that name; refused where it is gone or hidden, as a cell of it can't be shown then. */
export function shownSheet(grid: Grid, name: string, cell: string): Worksheet {
  const failed = `${cell} on sheet “${name}” could not be shown`;
  const sheet = sheetNamed(openBook(grid).getWorkbook(), name);
  if (!sheet) throw new HostRefused(`${failed}. The sheet was renamed or deleted. Run the audit again.`);
  if (sheet.isSheetHidden() === BooleanNumber.TRUE) {
    throw new HostRefused(
      `${failed}. The sheet is hidden. Unhide it (right-click a sheet tab), then try again.`,
    );
  }
  return sheet;
}

/** The longest run of columns whose cells are not merged with those of other rows; all of them where each one is. */
function ownColumns(sheet: Worksheet, row: number, from: number, to: number): [first: number, last: number] {
  const shared = sheet
    .getConfig()
    .mergeData.map(areaOf)
    .filter(({ top, bottom }) => top <= row && bottom >= row && bottom > top);
  let longest: [number, number] = [from, to];
  let length = 0;
  let first = from;
  for (let column = from; column <= to; column++) {
    if (shared.some(({ left, right }) => left <= column && right >= column)) first = column + 1;
    else if (column - first + 1 > length) {
      length = column - first + 1;
      longest = [first, column];
    }
  }
  return longest;
}

export function selectCell(grid: Grid, { sheet, row, column }: CellPlace): void {
  selectRow(grid, sheet, row, column, column);
}

/** Brings a cell into view where it is not; only a grid on a screen scrolls. */
export function scrollTo(sheet: ReturnType<FWorkbook['getActiveSheet']>, row: number, column: number): void {
  const screen = sheet as {
    readonly scrollToCell?: (row: number, column: number) => unknown;
    readonly getVisibleRange?: () => IRange | null;
  };
  const seen = screen.getVisibleRange?.();
  const near = (place: number, first = 0, last = -1): boolean => place > first && place < last;
  if (near(row, seen?.startRow, seen?.endRow) && near(column, seen?.startColumn, seen?.endColumn)) return;
  screen.scrollToCell?.(Math.max(0, row - 6), Math.max(0, column - 2));
}
