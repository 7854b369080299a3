import { type Cell, DateCell, ErrorCell, PercentCell } from '../../../src/cells/cell.ts';
import type { Workbook } from '../../../src/cells/sheet.ts';
import { excelPort } from '../../../src/hosts/excel/excelPort.ts';
import type { WorkbookPort } from '../../../src/hosts/port/port.ts';
import { FakeBook } from '../../office/fake/book.ts';
import { type Content, ErrorValue } from '../../office/fake/entry.ts';
import { FakeExcel } from '../../office/fake/fakeExcel.ts';
import type { FakeSheet } from '../../office/fake/sheet.ts';

/** The fake Excel with a workbook, and the port to it. */
export function openInExcel(book: FakeBook, apiVersion?: string): { excel: FakeExcel; port: WorkbookPort } {
  const excel = new FakeExcel(book, apiVersion);
  return { excel, port: excelPort({ library: excel.library }) };
}

/** A fake workbook with the contents of one that was read. */
export function fakeBookOf({ name, sheets }: Workbook): FakeBook {
  const book = new FakeBook();
  book.name = name;
  for (const { name: sheetName, rows, hidden, hiddenRows, hiddenColumns = [], tables } of sheets) {
    const sheet = book.add(sheetName);
    if (hidden) sheet.visibility = 'Hidden';
    for (const row of hiddenRows) sheet.hiddenRows.add(row);
    for (const column of hiddenColumns) sheet.hiddenColumns.add(column);
    for (const { name: table, area, headerRow, totalsRow } of tables) {
      sheet.tables.push({ name: table, area, showHeaders: headerRow, showTotals: totalsRow });
    }
    rows.forEach((row, rowIndex) => {
      row.forEach((cell, column) => {
        put(sheet, rowIndex + 1, column + 1, cell);
      });
    });
  }
  return book;
}

function put(sheet: FakeSheet, row: number, column: number, cell: Cell): void {
  const set = (content: Content, format?: string): void => {
    sheet.setContent(row, column, content);
    if (format !== undefined) sheet.setFormat(row, column, format);
  };
  if (cell instanceof DateCell) set(cell.day + 25_569, 'yyyy-mm-dd hh:mm');
  else if (cell instanceof PercentCell) set(cell.percent / 100, '0.0%');
  else if (cell instanceof ErrorCell) set(new ErrorValue(cell.code));
  else if (cell !== null) set(cell);
}
