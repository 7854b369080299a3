import { factAt, factOf, type PlacedFact } from '../../model/findings.ts';
import { columnLetters } from '../../../cells/address.ts';
import type { Sheet } from '../../../cells/sheet.ts';
import type { Unit } from '../../../units/parse.ts';
import type { RawRecord } from './rawRecord.ts';
import type { RecordColumn } from '../tables/recordHeaders.ts';

/** The unit of a column of gaps or displacements; `null`, with a remark, where nothing names one. */
export function unitOrRemark(
  sheet: Sheet,
  row: number,
  { column, header, unit }: RecordColumn,
  remarks: PlacedFact[],
): Unit | null {
  if (unit) return unit;
  const place = { sheet: sheet.name, row, column: columnLetters(column) };
  remarks.push(factAt(place, factOf('record-unit-missing', 'warning', { kind: 'gap', header })));
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
  remarks: PlacedFact[],
): RawRecord[] {
  if (unit) return [...records];
  const fits = records.filter(
    ({ points }) => 2 * points.filter(({ volts }) => Math.abs(volts) > mostVolts).length <= points.length,
  );
  if (fits.length < records.length) {
    const values = { kind: 'too large for volts', header, othersUsed: fits.length > 0 } as const;
    const place = { sheet: sheet.name, row, column: columnLetters(column) };
    remarks.push(factAt(place, factOf('record-unit-missing', 'warning', values)));
  }
  return fits;
}
