import {
  BooleanNumber,
  CellValueType,
  type ICellData,
  type IRowData,
  type IWorksheetData,
} from '@univerjs/core';
import type { Area, Sheet } from '../../cells/sheet.ts';
import type { SheetView, ViewCell, ViewColumns } from '../../hosts/file/view/types.ts';
import { lastColumn as endColumn, lastRow as endRow } from '../../hosts/file/read/area.ts';
import { markOfText } from '../../hosts/grid/storedText.ts';
import { frozenAt, mergedRanges } from '../../hosts/grid/frame.ts';
import { keptLink } from '../../hosts/grid/links.ts';
import { plainNumber } from '../grid/plainNumber.ts';
import { rowPixels } from '../../hosts/grid/write/sheetData.ts';

/** Rows and columns shown at least, and behind the last ones in use. */
const least = { rows: 100, columns: 26 } as const;
const spare = { rows: 40, columns: 6 } as const;
/** A file may give a width to every column up to the last; no more of them are stored than this. */
const mostColumns = 1_000;
/** A file may lay one link over a whole sheet. */
const mostLinkedCells = 1_000;

/** What a sheet has to know of the file's styles, by their number in the file. */
export interface StyleFacts {
  /** Name of the style in the grid. */
  readonly id: (style: number) => string;
  /** Days by which numbers of the style grow. */
  readonly daysMore: (style: number) => number;
  /** Size of its font in points. */
  readonly size: (style: number) => number;
}

/** Height of a line as a part of the size of its font (from memory); files leave out the height of rows of one line. */
const lineHeight = 1.3;

/** A sheet of a file as the grid stores it. */
export function gridSheet(
  view: SheetView,
  id: string,
  styles: StyleFacts,
  plainText?: Sheet['plainText'],
): Partial<IWorksheetData> {
  const cellData: Record<number, Record<number, ICellData>> = {};
  const rowData: Record<number, Partial<IRowData>> = {};
  const filled = filledByArrays(view);
  let lastRow = 0;
  let lastColumn = 0;
  for (const { row, height, hidden, cells } of view.rows) {
    if (cells.length > 0) {
      cellData[row - 1] = Object.fromEntries(
        cells.map((cell) => [
          cell.column - 1,
          {
            s: styles.id(cell.style),
            ...(filled(row, cell.column) ? {} : content(cell, styles.daysMore(cell.style), plainText)),
          },
        ]),
      );
      lastRow = Math.max(lastRow, row);
      lastColumn = Math.max(lastColumn, cells.at(-1)?.column ?? 0);
    }
    const line = Math.max(
      ...cells.flatMap(({ value, style }) => (value === null ? [] : styles.size(style) * lineHeight)),
    );
    const tall = height ?? (line > view.defaultRowHeight ? line : undefined);
    if (tall !== undefined || hidden) {
      rowData[row - 1] = {
        ...(tall !== undefined && { h: rowPixels(tall), ia: BooleanNumber.FALSE }),
        ...(hidden && { hd: BooleanNumber.TRUE }),
      };
      lastRow = Math.max(lastRow, row);
    }
  }
  for (const { area, to } of view.links ?? []) {
    for (const [row, column] of linkedCells(area)) {
      const cell = cellData[row - 1]?.[column - 1];
      if (cell) cell.custom = { ...cell.custom, ...keptLink(to) };
    }
  }
  for (const { bottom, right } of view.merges) {
    lastRow = Math.max(lastRow, bottom);
    lastColumn = Math.max(lastColumn, right);
  }
  const { rows, columns } = view.frozen;
  return {
    id,
    name: view.name,
    hidden: view.hidden ? BooleanNumber.TRUE : BooleanNumber.FALSE,
    rowCount: Math.min(endRow, Math.max(least.rows, lastRow + spare.rows, rows + 1)),
    columnCount: Math.min(endColumn, Math.max(least.columns, lastColumn + spare.columns, columns + 1)),
    cellData,
    rowData,
    columnData: Object.fromEntries(view.columns.flatMap(columnEntries)),
    defaultColumnWidth: view.defaultColumnWidth,
    defaultRowHeight: rowPixels(view.defaultRowHeight),
    mergeData: mergedRanges(view.merges),
    freeze: frozenAt(rows, columns),
    showGridlines: view.showGridLines ? BooleanNumber.TRUE : BooleanNumber.FALSE,
    custom: {
      tables: view.tables,
      ...(view.rules && { rules: view.rules }),
      ...(plainText && { plainText }),
    },
  };
}

/** Cells of a link, row and column from 1; of a link over more of them than people draw, the first one. */
function linkedCells({ top, left, bottom, right }: Area): [row: number, column: number][] {
  const width = right - left + 1;
  const count = width * (bottom - top + 1);
  return Array.from({ length: count > mostLinkedCells ? 1 : count }, (_, index) => [
    top + Math.floor(index / width),
    left + (index % width),
  ]);
}

function columnEntries({ first, last, width, hidden }: ViewColumns): [number, object][] {
  const data = {
    ...(width !== undefined && { w: width }),
    ...(hidden && { hd: BooleanNumber.TRUE }),
  };
  const end = Math.min(last, mostColumns);
  return Array.from({ length: Math.max(0, end - first + 1) }, (_, index) => [first - 1 + index, data]);
}

/** Whether a cell holds what an array formula beside it gave; the grid calculates those itself. */
function filledByArrays({ rows }: SheetView): (row: number, column: number) => boolean {
  const areas = rows.flatMap(({ cells }) => cells.flatMap(({ array }) => (array ? [array] : [])));
  return (row, column) =>
    areas.some(
      ({ top, left, bottom, right }) =>
        row >= top && row <= bottom && column >= left && column <= right && !(row === top && column === left),
    );
}

/** The first cell of an array formula is stored without its result, so that the grid fills the others. */
function content(
  { value, error, formula, array }: ViewCell,
  daysMore: number,
  plainText: Sheet['plainText'],
): ICellData {
  const number = plainText && typeof value === 'string' ? plainNumber(value, plainText) : undefined;
  if (number) return number;
  const several = array && (array.bottom > array.top || array.right > array.left);
  const result = several ? {} : valueOf(typeof value === 'number' ? value + daysMore : value, error === true);
  return formula === undefined ? result : { ...result, f: `=${formula}` };
}

function valueOf(value: ViewCell['value'], error: boolean): ICellData {
  if (value === null || value === '') return {};
  if (typeof value === 'boolean') return { v: value ? 1 : 0, t: CellValueType.BOOLEAN };
  if (typeof value === 'number') return { v: value, t: CellValueType.NUMBER };
  return { v: value, t: error ? CellValueType.STRING : markOfText(value) };
}
