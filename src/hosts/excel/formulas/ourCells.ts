import type { CellPlace } from '../../port/port.ts';
import { readOutline } from '../read/outline.ts';
import { readPieces, tripsOf } from '../read/pieces.ts';
import { hasStoredName, isOurs } from '../../formats/ourFormula.ts';

/** A cell with a formula of ours. */
export interface OurCell {
  readonly sheetId: string;
  readonly place: CellPlace;
  /** It shows `#NAME?`, or its function's name in the stored form: Excel does not know the function. */
  readonly broken: boolean;
}

/** Every cell with a formula of ours; sheets without formulas are not read. */
export async function readOurCells(context: Excel.RequestContext): Promise<OurCell[]> {
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

interface Formulas {
  readonly formulas: readonly (readonly unknown[])[];
  readonly values: readonly (readonly unknown[])[];
}

function askForFormulas(range: Excel.Range): () => Formulas | null {
  range.load('formulas,values');
  return () => {
    const formulas = range.formulas as Formulas['formulas'] | null;
    const values = range.values as Formulas['values'] | null;
    return formulas === null || values === null ? null : { formulas, values };
  };
}
