import type {} from '@univerjs/engine-formula/facade';
import { callsOurs, hasStoredName, withShownNames } from '../formats/ourFormula.ts';
import type { CellPlace } from '../port/port.ts';
import { type Grid, openBook, sheetNamed, storedBook } from './grid.ts';
import { pause } from './pause.ts';

interface OurCell {
  readonly place: CellPlace;
  readonly formula: string;
  readonly broken: boolean;
}

function ourCells(grid: Grid): OurCell[] {
  const found: OurCell[] = [];
  for (const sheet of storedBook(grid).getSheets()) {
    sheet.getCellMatrix().forValue((row, column, cell) => {
      const { f: formula, v: value } = cell ? cell : {};
      if (typeof formula !== 'string') return;
      if (!callsOurs(formula)) return;
      const place = { sheet: sheet.getName(), row: row + 1, column: column + 1 };
      found.push({ place, formula, broken: hasStoredName(formula) || value === '#NAME?' });
    });
  }
  return found;
}

/** Cells with a formula of ours that the grid can't calculate because it does not know the name. */
export function findBrokenFormulas(grid: Grid): CellPlace[] {
  return ourCells(grid).flatMap(({ broken, place }) => (broken ? [place] : []));
}

/** Enters the formulas of these cells anew, with the names as they are typed; the number of cells. */
export function repairFormulas(grid: Grid, places: readonly CellPlace[]): number {
  const book = openBook(grid);
  let count = 0;
  for (const { sheet: name, row, column } of places) {
    const sheet = sheetNamed(book.getWorkbook(), name);
    const formula = sheet?.getCellMatrix().getValue(row - 1, column - 1)?.f;
    if (!sheet || typeof formula !== 'string') continue;
    book
      .getSheetBySheetId(sheet.getSheetId())
      ?.getRange(row - 1, column - 1)
      .setValue({ f: withShownNames(formula), v: null });
    count++;
  }
  return count;
}

/**
 * Waits until what was changed so far is calculated. The grid begins a tenth of a second after the last change; until then
 * formulas show what they showed before, or nothing.
 */
export async function calculated(grid: Grid): Promise<void> {
  do await grid.api.getFormula().onCalculationResultApplied();
  while (!grid.settled());
}

/** Calculates every formula anew; the number of cells with formulas of ours. */
export async function recalculate(grid: Grid): Promise<number> {
  const count = ourCells(grid).length;
  const done = calculated(grid);
  grid.api.getFormula().executeCalculation();
  await done;
  await pause();
  return count;
}
