import type { CellPlace } from '../../port/port.ts';
import type { Session } from '../session.ts';
import { readOurCells } from './ourCells.ts';

/** Cells with a formula of ours that Excel can't calculate because it does not know the function. */
export function findBrokenFormulas(session: Session): Promise<readonly CellPlace[]> {
  return session.run('The formulas could not be looked through', async (context) => {
    const cells = await readOurCells(context);
    return cells.filter(({ broken }) => broken).map(({ place }) => place);
  });
}

/**
 * Calculates anew the sheets that hold formulas of ours, without entering anything, so that nothing a person could undo is
 * lost; the number of cells with formulas of ours.
 */
export function recalculate(session: Session): Promise<number> {
  return session.run('The formulas were not calculated anew', async (context) => {
    const cells = await readOurCells(context);
    for (const id of new Set(cells.map(({ sheetId }) => sheetId))) {
      context.workbook.worksheets.getItem(id).calculate(true);
    }
    if (cells.length > 0) await context.sync();
    return cells.length;
  });
}

/**
 * Whether Excel knows the worksheet functions: true once it has called one of them (`wasCalled`) or shows one by its name
 * with a result, false where it knows none of those in the workbook, `null` where the workbook has none to tell by.
 */
export async function functionsReady(session: Session, wasCalled: () => boolean): Promise<boolean | null> {
  if (wasCalled()) return true;
  const cells = await session.run('Whether the functions are registered could not be told', readOurCells);
  return cells.length === 0 ? null : cells.some(({ broken }) => !broken);
}
