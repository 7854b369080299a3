import type { Worksheet } from '@univerjs/core';
import { kindOfCode } from '../../hosts/formats/numberFormat.ts';
import { type Grid, shownContent, storedBook, styleOf } from '../../hosts/grid/grid.ts';
import { areaOf } from '../../hosts/grid/read/readWorkbook.ts';
import { laterStart } from '../open/gridWorkbook.ts';
import { type CellContent, cellContent } from './cellContent.ts';

export type { CellContent } from './cellContent.ts';

/** What cells of a sheet hold as the file is to store it, row and column from 0; dates in the file's own date system. */
export function sheetContent(
  grid: Grid,
  sheet: Worksheet,
  date1904: boolean,
): (row: number, column: number) => CellContent {
  const book = storedBook(grid);
  const contentAt = shownContent(grid, sheet);
  const areas = grid.spillAreas(sheet.getUnitId(), sheet.getSheetId());
  return (row, column) => {
    const stored = contentAt(row, column);
    const content = cellContent(stored);
    const pattern = date1904 ? styleOf(book, stored)?.n?.pattern : undefined;
    const dated =
      typeof content.value === 'number' && pattern !== undefined && kindOfCode(pattern) === 'date';
    const value = dated ? content.value - laterStart : content.value;
    const area = content.formula === undefined ? undefined : areas[row]?.[column];
    return { ...content, value, ...(area && { array: areaOf(area) }) };
  };
}

/** Places of a sheet, from 1, at which something is stored or shown. */
export function filledCells(grid: Grid, sheet: Worksheet): [row: number, column: number][] {
  const places: [number, number][] = [];
  sheet.getCellMatrix().forValue((row, column) => {
    places.push([row + 1, column + 1]);
  });
  const spilled = grid.spilled(sheet.getUnitId(), sheet.getSheetId());
  for (const [row, cells] of Object.entries(spilled)) {
    for (const column of Object.keys(cells as object)) places.push([Number(row) + 1, Number(column) + 1]);
  }
  return places;
}
