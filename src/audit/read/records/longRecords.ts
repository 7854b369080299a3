import type { PlacedFact } from '../../model/findings.ts';
import { isBlank } from '../../../cells/cell.ts';
import { columnLetters } from '../../../cells/address.ts';
import { type Sheet, cellAt } from '../../../cells/sheet.ts';
import { readDate } from '../rows/date.ts';
import type { RawRecord } from './rawRecord.ts';
import { recordNumber } from './recordCells.ts';
import type { RecordColumn } from '../tables/recordHeaders.ts';
import { unitOrRemark, voltsOrRemark } from './recordUnits.ts';
import { rowNames, type LongTable } from './rowNames.ts';

/** The records of a long table: one for each tag, series and temperature, whatever the order of the rows. */
export function* longRecords(table: LongTable, remarks: PlacedFact[]): Generator<void, RawRecord[], void> {
  const { sheet, headerRow, columns } = table;
  const [tag, gap, volts] = [columns.get('tag'), columns.get('gap'), columns.get('volts')];
  if (!tag || !gap || !volts) return [];
  const gapUnit = unitOrRemark(sheet, headerRow, gap, remarks);
  const toVolts = volts.unit ? volts.unit.factor : 1;
  if (!gapUnit) return [];
  const found = new Map<string, RawRecord>();
  for (const name of rowNames(table, tag, [gap, volts], remarks)) {
    if (!name) {
      yield;
      continue;
    }
    const { row, key, ...named } = name;
    let record = found.get(key);
    if (!record) {
      record = {
        kind: 'record',
        ...named,
        takenOn: dayOf(sheet, row, columns.get('takenOn')),
        gapUnit,
        points: [],
        remarks: [],
        sheet: sheet.name,
        row,
        column: columnLetters(gap.column),
      };
      found.set(key, record);
    }
    const at = recordNumber(sheet, row, gap, record.remarks);
    const read = recordNumber(sheet, row, volts, record.remarks);
    if (at !== null && read !== null) record.points.push({ row, gap: at, volts: read * toVolts });
  }
  return voltsOrRemark(sheet, headerRow, volts, [...found.values()], remarks);
}

function dayOf(sheet: Sheet, row: number, column: RecordColumn | undefined): number | null {
  const cell = column ? cellAt(sheet, row, column.column) : null;
  if (cell === null || isBlank(cell)) return null;
  const read = readDate(cell);
  return 'day' in read ? read.day : null;
}
