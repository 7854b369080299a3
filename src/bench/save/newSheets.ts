import type { Workbook, Worksheet } from '@univerjs/core';
import { storedFormula } from '../../hosts/formats/storedFormula.ts';
import { type Grid, shownContent, storedBook, styleOf } from '../../hosts/grid/grid.ts';
import type { CellStyle, ModelCell, ModelRow, SheetModel } from '../../sheets/model.ts';
import { cellContent } from './cellContent.ts';
import { fileLook } from './fileLook.ts';

/** Sheets of the grid that the file has not: result sheets as they were made, others as they stand in the grid. */
export function newSheets(
  grid: Grid,
  isFiles: (id: string) => boolean,
  unchanged: (id: string) => SheetModel | undefined,
): SheetModel[] {
  const book = storedBook(grid);
  return book.getSheets().flatMap((sheet) => {
    if (isFiles(sheet.getSheetId())) return [];
    const made = unchanged(sheet.getSheetId());
    return made ? [made] : [sheetModel(grid, book, sheet)];
  });
}

function sheetModel(grid: Grid, book: Workbook, sheet: Worksheet): SheetModel {
  const contentAt = shownContent(grid, sheet);
  const styles: Record<string, CellStyle> = {};
  const formulas: string[] = [];
  const spilled = grid.spilled(sheet.getUnitId(), sheet.getSheetId());
  const rowNumbers = [...Object.keys(sheet.getCellMatrix().getMatrix()), ...Object.keys(spilled)].map(Number);
  const rowCount = Math.max(0, ...rowNumbers.map((row) => row + 1));

  const cellOf = (row: number, column: number): ModelCell | undefined => {
    const stored = contentAt(row, column);
    if (!stored) return undefined;
    const { value, formula } = cellContent(stored);
    const look = fileLook(styleOf(book, stored));
    const style = look && JSON.stringify(look);
    if (look && style !== undefined) styles[style] = look;
    if (value === null && formula === undefined && !look) return undefined;
    return {
      value,
      ...(style !== undefined && { style }),
      ...(formula !== undefined && { formula: formulas.push(storedFormula(formula)) - 1 }),
    };
  };
  const rows = Array.from({ length: rowCount }, (_, row): ModelRow => {
    const columns = Object.keys({ ...sheet.getCellMatrix().getRow(row), ...spilled[row] }).map(Number);
    const length = Math.max(0, ...columns.map((column) => column + 1));
    return { cells: Array.from({ length }, (__, column) => cellOf(row, column)) };
  });
  return {
    name: sheet.getName(),
    widths: Array.from({ length: Math.max(0, ...rows.map(({ cells }) => cells.length)) }, (_, column) =>
      Math.max(0, (sheet.getColumnWidth(column) - 5) / 7),
    ),
    styles,
    formulas,
    rowCount,
    rows: () => rows,
    print: { landscape: true },
  };
}
