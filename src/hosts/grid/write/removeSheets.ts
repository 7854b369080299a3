import { BooleanNumber } from '@univerjs/core';
import { refersTo } from '../../formats/sheetReference.ts';
import { type CellPlace, HostRefused } from '../../port/port.ts';
import { type Grid, openBook, storedBook } from '../grid.ts';
import { tablesOf } from '../tables.ts';

/** Deletes sheets as one step for Undo; refused where no other sheet would be seen. Their ids. */
export function removeSheets(grid: Grid, names: readonly string[]): readonly string[] {
  const step = grid.oneStep(openBook(grid).getId());
  try {
    return deleteSheets(grid, names);
  } finally {
    step.dispose();
  }
}

/** The same as a part of a step that is under way. */
export function deleteSheets(grid: Grid, names: readonly string[]): readonly string[] {
  const book = openBook(grid);
  const sheets = book.getWorkbook().getSheets();
  const going = sheets.filter((sheet) => names.includes(sheet.getName()));
  if (sheets.every((sheet) => going.includes(sheet) || sheet.isSheetHidden() === BooleanNumber.TRUE)) {
    throw new HostRefused(
      'No sheet was removed. The workbook would hold no other sheet to be seen. Add or unhide a sheet of yours, then try again.',
    );
  }
  for (const sheet of going) book.deleteSheet(sheet.getSheetId());
  return going.map((sheet) => sheet.getSheetId());
}

/** Cells of other sheets whose formulas refer to these sheets or to tables on them. */
export function referencesTo(grid: Grid, names: readonly string[]): readonly CellPlace[] {
  const sheets = storedBook(grid).getSheets();
  const tables = sheets
    .filter((sheet) => names.includes(sheet.getName()))
    .flatMap((sheet) => tablesOf(sheet).map(({ name }) => name));
  const found: CellPlace[] = [];
  for (const sheet of sheets) {
    const name = sheet.getName();
    if (names.includes(name)) continue;
    sheet.getCellMatrix().forValue((row, column, cell) => {
      if (typeof cell?.f === 'string' && refersTo(cell.f, { sheets: names, tables }))
        found.push({ sheet: name, row: row + 1, column: column + 1 });
    });
  }
  return found;
}
