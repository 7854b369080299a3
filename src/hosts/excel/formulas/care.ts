import type { CellPlace } from '../../port/port.ts';
import type { Session } from '../session.ts';
import { askForFormulas } from './askForFormulas.ts';
import { readOutline } from '../read/outline.ts';
import { readPieces, tripsOf } from '../read/pieces.ts';
import { hasStoredName, isOurs } from '../../formats/ourFormula.ts';

/** A cell with a formula of ours. */
interface OurCell {
  readonly sheetId: string;
  readonly place: CellPlace;
  /** It shows `#NAME?`, or its function's name in the stored form: Excel does not know the function. */
  readonly broken: boolean;
}

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

/** Every cell with a formula of ours; sheets without formulas are not read. */
async function readOurCells(context: Excel.RequestContext): Promise<OurCell[]> {
  const { sheets } = await readOutline(context);
  const asked = sheets.map((outline) => ({
    outline,
    formulas: outline.sheet.getRange().getSpecialCellsOrNullObject('Formulas'),
  }));
  for (const { formulas } of asked) formulas.load('cellCount');
  await context.sync();
  const withFormulas = asked.filter(({ formulas }) => !formulas.isNullObject).map(({ outline }) => outline);

  const found: OurCell[] = [];
  for (const trip of tripsOf(withFormulas)) {
    await readPieces(context, trip, askForFormulas, ({ sheet, top }, { formulas, values }) => {
      formulas.forEach((row, rowIndex) => {
        row.forEach((formula, columnIndex) => {
          if (!isOurs(formula)) return;
          found.push({
            sheetId: sheet.id,
            place: { sheet: sheet.name, row: top + rowIndex, column: sheet.used.left + columnIndex },
            broken: values[rowIndex]?.[columnIndex] === '#NAME?' || hasStoredName(formula),
          });
        });
      });
    });
  }
  return found;
}
