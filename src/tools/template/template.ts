import { newWorkbook } from '../../hosts/file/write/newWorkbook.ts';
import { packParts, unpackParts } from '../demo/package/parts.ts';
import { sheetPartName } from '../demo/package/sheetElement.ts';
import { addValidations } from '../demo/parts/validation.ts';
import { budgetSheet, budgetValidations } from './budget/budgetSheet.ts';
import { templateNotes } from './notesSheet.ts';
import { recordsSheet, recordValidations } from './records/recordsSheet.ts';
import type { System } from '../../audit/read/tables/columnSpec.ts';
import { tableSheet, tableValidations } from './tableSheet.ts';

/**
 * An empty workbook to fill in, as .xlsx, in mil or µm: both tables with every standard header and its unit, those that are needed marked, a table for calibration
 * records, an uncertainty budget, rules for what may be typed, prompts with an example where a cell is selected, and notes on every column. It holds no channel, so an audit of it finds none. The same bytes at every call.
 */
export function template(system: System = 'mil'): Uint8Array {
  const parts = unpackParts(
    newWorkbook([
      tableSheet('channels', system),
      tableSheet('settings', system),
      recordsSheet(system),
      budgetSheet(),
      templateNotes(system),
    ]),
  );
  addValidations(parts, sheetPartName(1), tableValidations('channels', system));
  addValidations(parts, sheetPartName(2), tableValidations('settings', system));
  addValidations(parts, sheetPartName(3), recordValidations(system));
  addValidations(parts, sheetPartName(4), budgetValidations());
  return packParts(parts);
}
