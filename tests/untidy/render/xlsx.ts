import { columnLetters } from '../../../src/cells/address.ts';
import type { Cell } from '../../../src/cells/cell.ts';
import type { Area, Sheet, Workbook } from '../../../src/cells/sheet.ts';
import { bookParts, stylesOf, zip } from '../../hosts/file/read/book.ts';

/** Days from 1899-12-30, from which spreadsheets count, to 1970-01-01. */
const epoch = 25_569;
const dateStyle = 1;
const percentStyle = 2;

/** The workbook as the bytes of an .xlsx file: cells, merged areas, hidden sheets, rows and columns. */
export function xlsxOf({ sheets }: Workbook): Uint8Array {
  const parts = bookParts({
    styles: stylesOf(['General', 'yyyy-mm-dd', '0%']),
    sheets: sheets.map((sheet) => ({
      name: escaped(sheet.name),
      data: sheet.rows.map((cells, index) => rowMarkup(sheet, cells, index + 1)).join(''),
      after: mergesMarkup(sheet.merged ?? []),
      ...(sheet.hidden ? { state: 'hidden' } : {}),
    })),
  });
  sheets.forEach((sheet, index) => {
    const name = `xl/worksheets/sheet${index + 1}.xml`;
    const hidden = [...(sheet.hiddenColumns ?? [])].map(
      (column) => `<col min="${column}" max="${column}" width="10" hidden="1"/>`,
    );
    if (hidden.length === 0) return;
    parts[name] = (parts[name] as string).replace(
      '<sheetData>',
      `<cols>${hidden.join('')}</cols><sheetData>`,
    );
  });
  return zip(parts);
}

function rowMarkup(sheet: Sheet, cells: readonly Cell[], row: number): string {
  const hidden = sheet.hiddenRows.has(row) ? ' hidden="1"' : '';
  return `<row r="${row}"${hidden}>${cells.map((cell, index) => (isCovered(sheet, row, index + 1) ? '' : cellMarkup(cell, `${columnLetters(index + 1)}${row}`))).join('')}</row>`;
}

/** Whether a merged area hides the cell, so that a file holds nothing there. */
function isCovered({ merged = [] }: Sheet, row: number, column: number): boolean {
  return merged.some(
    ({ top, left, bottom, right }) =>
      row >= top && row <= bottom && column >= left && column <= right && !(row === top && column === left),
  );
}

function cellMarkup(cell: Cell, at: string): string {
  if (cell === null) return '';
  if (typeof cell === 'number') return `<c r="${at}"><v>${cell}</v></c>`;
  if (typeof cell === 'string')
    return `<c r="${at}" t="inlineStr"><is><t xml:space="preserve">${escaped(cell)}</t></is></c>`;
  if (typeof cell === 'boolean') return `<c r="${at}" t="b"><v>${cell ? 1 : 0}</v></c>`;
  if ('day' in cell) return `<c r="${at}" s="${dateStyle}"><v>${cell.day + epoch}</v></c>`;
  if ('percent' in cell) return `<c r="${at}" s="${percentStyle}"><v>${cell.percent / 100}</v></c>`;
  return `<c r="${at}" t="e"><v>${escaped(cell.code)}</v></c>`;
}

function mergesMarkup(merged: readonly Area[]): string {
  if (merged.length === 0) return '';
  const areas = merged.map(
    ({ top, left, bottom, right }) =>
      `<mergeCell ref="${columnLetters(left)}${top}:${columnLetters(right)}${bottom}"/>`,
  );
  return `<mergeCells count="${merged.length}">${areas.join('')}</mergeCells>`;
}

function escaped(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('"', '&quot;');
}
