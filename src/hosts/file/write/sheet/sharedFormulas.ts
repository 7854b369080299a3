import type { SheetModel } from '../../../../sheets/model.ts';
import { escapeXml } from '../xml/text.ts';
import type { RowFormula } from '../../../formats/rowFormula.ts';

/**
 * Formulas down a column are stored once (ECMA-376 part 1, 18.3.1.40): the first cell carries the text and the range
 * down to the sheet's last row, the cells below only its number. Rows must come in order. Throws an Error for a
 * formula that is not defined.
 */
export function formulaWriter(
  sheet: SheetModel,
  formulas: readonly RowFormula[],
): (index: number, row: number, columnName: string) => string {
  const followers = formulas.map(() => new Map<string, string>());
  let groups = 0;
  return (index, row, columnName) => {
    const formula = formulas[index];
    const columns = followers[index];
    if (!formula || !columns)
      throw new Error(`sheet "${sheet.name}" has no formula ${index} (cell ${columnName}${row})`);
    if (!formula.shareable) return `<f>${escapeXml(formula.at(row))}</f>`;
    const follower = columns.get(columnName);
    if (follower !== undefined) return follower;
    const number = groups++;
    columns.set(columnName, `<f t="shared" si="${number}"/>`);
    const range =
      row === sheet.rowCount ? `${columnName}${row}` : `${columnName}${row}:${columnName}${sheet.rowCount}`;
    return `<f t="shared" ref="${range}" si="${number}">${escapeXml(formula.at(row))}</f>`;
  };
}
