import { columnLetters } from '../../../cells/address.ts';
import type { Sheet } from '../../../cells/sheet.ts';
import type { Unit } from '../../../units/parse.ts';
import type { RawRecord, RecordRemark } from './rawRecord.ts';
import type { RecordColumn } from '../tables/recordHeaders.ts';

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

/** No gap voltage in V is larger: supplies are −18 to −26 V. Common practice, no source. */
const mostVolts = 30;

/**
 * The records whose voltages can be in V where the header names no unit: a column of -8000 is meant in mV, and is not
 * used, with a remark. One slip among the voltages does not count.
 */
export function voltsOrRemark(
  sheet: Sheet,
  row: number,
  { column, header, unit }: RecordColumn,
  records: readonly RawRecord[],
  remarks: RecordRemark[],
): RawRecord[] {
  if (unit) return [...records];
  const fits = records.filter(
    ({ points }) => 2 * points.filter(({ volts }) => Math.abs(volts) > mostVolts).length <= points.length,
  );
  if (fits.length < records.length) {
    remarks.push({
      rule: 'record-unit-missing',
      severity: 'warning',
      message: `'${header}' names no unit, and its numbers are too large for gap voltages in V, so ${fits.length > 0 ? 'records of that size were' : 'it was'} not used. Write the unit in brackets in the header, such as Output (mV).`,
      sheet: sheet.name,
      row,
      column: columnLetters(column),
    });
  }
  return fits;
}
