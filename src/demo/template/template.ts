import { newWorkbook } from '../../hosts/file/write/newWorkbook.ts';
import { packParts, unpackParts } from '../package/parts.ts';
import { sheetPartName } from '../package/sheetElement.ts';
import { addValidations } from '../parts/validation.ts';
import { budgetSheet, budgetValidations } from './budget/budgetSheet.ts';
import { templateNotes } from './notesSheet.ts';
import { recordsSheet, recordValidations } from './records/recordsSheet.ts';
import { tableSheet, tableValidations } from './tableSheet.ts';

/**
 * An empty workbook to fill in, as .xlsx: both tables with every standard header and its unit, a table for calibration
 * records, an uncertainty budget, rules for what may be typed, and notes on every column. It holds no channel, so an audit of it finds none. The same bytes at every call.
 */
export function template(): Uint8Array {
  const parts = unpackParts(
    newWorkbook([
      tableSheet('channels'),
      tableSheet('settings'),
      recordsSheet(),
      budgetSheet(),
      templateNotes(),
    ]),
  );
  addValidations(parts, sheetPartName(1), tableValidations('channels'));
  addValidations(parts, sheetPartName(2), tableValidations('settings'));
  addValidations(parts, sheetPartName(3), recordValidations());
  addValidations(parts, sheetPartName(4), budgetValidations());
  return packParts(parts);
}
