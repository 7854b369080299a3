import { cellAddress } from '../../cells/address.ts';
import { type CellPlace, HostRefused } from '../port/port.ts';
import { refusalOf } from './refusal.ts';
import type { Session } from './session.ts';

const failed = 'The formula was not inserted';

/**
 * Puts a formula (in English, with or without its `=`) into the first cell of the selection and says where that is. A cell
 * formatted as text gets the general format, for else it would show the formula instead of its result. Refused where the
 * cell is filled and `overwrite` is not given, and where it is locked.
 */
export function insertFormula(session: Session, formula: string, overwrite = false): Promise<CellPlace> {
  return session.run(failed, async (context) => {
    const cell = context.workbook.getSelectedRange().getCell(0, 0);
    cell.load('rowIndex,columnIndex,formulas,numberFormat');
    cell.worksheet.load('name');
    cell.worksheet.protection.load('protected');
    cell.format.protection.load('locked');
    await context.sync();

    const place = { sheet: cell.worksheet.name, row: cell.rowIndex + 1, column: cell.columnIndex + 1 };
    const where = `Cell ${cellAddress(place.row, place.column)} on sheet “${place.sheet}”`;
    if (cell.worksheet.protection.protected && cell.format.protection.locked) {
      throw new HostRefused(
        `${failed}. ${where} is locked. Remove the sheet’s protection on the Review tab, or choose another cell.`,
      );
    }
    const content: unknown = cell.formulas[0]?.[0];
    if (content !== '' && !overwrite) {
      throw new HostRefused(
        `${failed}. ${where} is filled. Choose an empty cell, or choose to overwrite it.`,
      );
    }
    if (cell.numberFormat[0]?.[0] === '@') cell.numberFormat = [['General']];
    cell.formulas = [[formula.startsWith('=') ? formula : `=${formula}`]];
    try {
      await context.sync();
    } catch (error) {
      // Of several calls in a request those before the refused one stay done; an answer may be lost, too.
      const at = `cell ${cellAddress(place.row, place.column)} on sheet “${place.sheet}”`;
      throw refusalOf(error, failed, `Look at ${at}: it may have been changed.`);
    }
    return place;
  });
}
