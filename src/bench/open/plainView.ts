import { type Cell, DateCell, ErrorCell, PercentCell } from '../../cells/cell.ts';
import type { Sheet } from '../../cells/sheet.ts';
import type { SheetView, ViewCell, WorkbookView } from '../../hosts/file/view/types.ts';

const plain = { font: 'Calibri', size: 11 } as const;
const looks = [
  { numberFormat: 'General', ...plain },
  { numberFormat: 'yyyy-mm-dd', ...plain },
  { numberFormat: 'yyyy-mm-dd hh:mm', ...plain },
  { numberFormat: '0.0##%', ...plain },
] as const;
/** Percentages of a table of plain text. */
export const percentStyle = looks[3];
const look = { plain: 0, date: 1, time: 2, percent: 3 } as const;

/** 1970-01-01 as a day number of the 1900 date system (ECMA-376 part 1, section 18.17.4.1). */
const epoch = 25_569;

/** A sheet of plain values as a workbook to show. */
export function plainView(name: string, sheet: Sheet): WorkbookView {
  const view: SheetView = {
    name: sheet.name.replace(/\.[^.]*$/, '').slice(0, 31),
    hidden: false,
    rows: sheet.rows.map((cells, index) => ({
      row: index + 1,
      cells: cells.flatMap((cell, column) => (cell === null ? [] : [viewCell(cell, column + 1)])),
    })),
    columns: [],
    defaultColumnWidth: 90,
    defaultRowHeight: 15,
    merges: [],
    frozen: { rows: 0, columns: 0 },
    showGridLines: true,
    tables: sheet.tables,
  };
  return { name, sheets: [view], activeSheet: 0, styles: looks, names: [], date1904: false };
}

function viewCell(cell: Exclude<Cell, null>, column: number): ViewCell {
  if (cell instanceof DateCell) {
    const style = Number.isInteger(cell.day) ? look.date : look.time;
    return { column, value: cell.day + epoch, style };
  }
  if (cell instanceof PercentCell) return { column, value: cell.percent / 100, style: look.percent };
  if (cell instanceof ErrorCell) return { column, value: cell.code, error: true, style: look.plain };
  return { column, value: cell, style: look.plain };
}
