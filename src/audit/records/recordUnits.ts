import { columnLetters } from '../../cells/address.ts';
import type { Sheet } from '../../cells/sheet.ts';
import type { Unit } from '../../units/parse.ts';
import type { RecordRemark } from './rawRecord.ts';
import type { RecordColumn } from './recordHeaders.ts';

/** The unit of a column of gaps or displacements; `null`, with a remark, where nothing names one. */
export function unitOrRemark(
  sheet: Sheet,
  row: number,
  { column, header, unit }: RecordColumn,
  remarks: RecordRemark[],
): Unit | null {
  if (unit) return unit;
  remarks.push({
    rule: 'record-unit-missing',
    severity: 'warning',
    message: `'${header}' beside a column of volts looks like a calibration record, but nothing names its unit, so it was not used. Write the unit in brackets in the header, such as Gap (mil).`,
    sheet: sheet.name,
    row,
    column: columnLetters(column),
  });
  return null;
}
