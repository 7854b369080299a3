import { cellAddress } from '../../cells/address.ts';
import { type CellPlace, HostRefused } from '../port/port.ts';
import { type Grid, openBook, shownContent } from './grid.ts';
import { pause } from './pause.ts';
import { readSelection } from './selection.ts';

/**
 * Puts a formula (with or without its `=`) into the first selected cell and says where that is. Refused where the cell is
 * filled and `overwrite` is not given.
 */
export async function insertFormula(grid: Grid, formula: string, overwrite = false): Promise<CellPlace> {
  const { sheet, area } = readSelection(grid);
  const place = { sheet, row: area.top, column: area.left };
  const front = openBook(grid).getActiveSheet();
  const stored = shownContent(grid, front.getSheet())(area.top - 1, area.left - 1);
  const filled =
    (stored?.v !== undefined && stored.v !== null && stored.v !== '') ||
    Boolean(stored?.f ?? stored?.si ?? stored?.p);
  if (filled && !overwrite) {
    throw new HostRefused(
      `The formula was not inserted. Cell ${cellAddress(place.row, place.column)} on sheet “${sheet}” is filled. Choose an empty cell, or choose to overwrite it.`,
    );
  }
  front
    .getRange(area.top - 1, area.left - 1)
    .setValue({ f: formula.startsWith('=') ? formula : `=${formula}`, v: null, p: null, t: null, si: null });
  await pause();
  return place;
}
