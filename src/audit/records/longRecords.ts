import { columnLetters } from '../../cells/address.ts';
import type { Sheet } from '../../cells/sheet.ts';
import { readDate } from '../rows/date.ts';
import { cellAt, isBlank } from '../tables/found.ts';
import type { RawRecord, RecordRemark } from './rawRecord.ts';
import { isEmptyPoint, recordNumber, recordText } from './recordCells.ts';
import type { RecordColumn, RecordColumnId } from './recordHeaders.ts';
import { tagKey } from '../join/tagIndex.ts';
import { unitOrRemark } from './recordUnits.ts';
import { seriesOf } from './series.ts';

/** A table of records with a tag in every row. */
export interface LongTable {
  readonly sheet: Sheet;
  readonly headerRow: number;
  readonly firstRow: number;
  readonly lastRow: number;
  readonly columns: ReadonlyMap<RecordColumnId, RecordColumn>;
}

/** The records of a long table: one for each tag, series and temperature, whatever the order of the rows. */
export function* longRecords(table: LongTable, remarks: RecordRemark[]): Generator<void, RawRecord[]> {
  const { sheet, headerRow, firstRow, lastRow, columns } = table;
  const [tag, gap, volts] = [columns.get('tag'), columns.get('gap'), columns.get('volts')];
  if (!tag || !gap || !volts) return [];
  const gapUnit = unitOrRemark(sheet, headerRow, gap, remarks);
  const toVolts = volts.unit ? volts.unit.factor : 1;
  if (!gapUnit) return [];
  const found = new Map<string, RawRecord>();
  let before = '';
  for (let row = firstRow; row <= lastRow; row++) {
    if (row % 2_000 === 0) yield;
    if (isEmptyPoint(sheet, row, gap, volts)) continue;
    // A tag written once over the rows of its record, as people do, holds for the rows below it.
    const written = recordText(sheet, row, tag);
    const name = written === '' ? before : written;
    before = name;
    if (name === '') {
      remarks.push({
        rule: 'record-without-tag',
        severity: 'warning',
        message: `Row ${row} has a gap and a voltage but no tag, so it belongs to no channel. Enter its tag.`,
        sheet: sheet.name,
        row,
        column: columnLetters(tag.column),
      });
      continue;
    }
    const series = seriesOf(recordText(sheet, row, columns.get('series')));
    const temperature = recordText(sheet, row, columns.get('temperature'));
    const key = `${tagKey(name)}\n${series}\n${temperature}`;
    let record = found.get(key);
    if (!record) {
      record = {
        kind: 'record',
        tag: name,
        series,
        temperature,
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
  return [...found.values()];
}

function dayOf(sheet: Sheet, row: number, column: RecordColumn | undefined): number | null {
  const cell = column ? cellAt(sheet, row, column.column) : null;
  if (cell === null || isBlank(cell)) return null;
  const read = readDate(cell);
  return 'day' in read ? read.day : null;
}
