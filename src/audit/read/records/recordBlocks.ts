import { factAt, factOf, type PlacedFact } from '../../model/findings.ts';
import { columnLetters } from '../../../cells/address.ts';
import { tagKey } from '../tables/tagKey.ts';
import { recordNumber } from './recordCells.ts';
import type { RawRecord } from './rawRecord.ts';
import { withUnitRow } from '../tables/recordHeaders.ts';
import { isEmptyPoint, isFilledPoint } from '../tables/recordParts.ts';
import type { RecordHead } from './recordHeads.ts';
import { tagAbove, titleSeries } from './recordTitle.ts';
import { unitOrRemark, voltsOrRemark } from './recordUnits.ts';

/** The record of a block: a gap column and a volts column of one probe, whose tag stands above or is the sheet's name. */
export function recordOfBlock(
  head: RecordHead,
  heads: readonly RecordHead[],
  isTag: (key: string) => boolean,
  remarks: PlacedFact[],
): RawRecord | undefined {
  const { sheet, row: headerRow, lastRow } = head;
  const { columns, firstRow: below } = withUnitRow(sheet, headerRow, head.columns);
  const [gap, volts] = columns;
  if (!gap || !volts) return undefined;
  const firstRow = isEmptyPoint(sheet, below, gap, volts) ? below + 1 : below;
  if (firstRow > lastRow || isEmptyPoint(sheet, firstRow, gap, volts)) return undefined;
  const tag = tagAbove(head, heads, isTag) ?? (isTag(tagKey(sheet.name)) ? sheet.name : undefined);
  const column = columnLetters(gap.column);
  if (tag === undefined) {
    if (head.besideTable) return undefined;
    const values = { kind: 'block', gapHeader: gap.header, voltsHeader: volts.header } as const;
    const place = { sheet: sheet.name, row: headerRow, column };
    remarks.push(factAt(place, factOf('record-without-tag', 'warning', values)));
    return undefined;
  }
  const gapUnit = unitOrRemark(sheet, headerRow, gap, remarks);
  if (!gapUnit) return undefined;
  const record: RawRecord = {
    kind: 'record',
    tag,
    series: titleSeries(head, heads),
    temperature: '',
    takenOn: null,
    gapUnit,
    points: [],
    remarks: [],
    sheet: sheet.name,
    row: firstRow,
    column,
  };
  const toVolts = volts.unit ? volts.unit.factor : 1;
  let row = firstRow;
  for (; row <= lastRow && !isEmptyPoint(sheet, row, gap, volts); row++) {
    const at = recordNumber(sheet, row, gap, record.remarks);
    const read = recordNumber(sheet, row, volts, record.remarks);
    if (at !== null && read !== null) record.points.push({ row, gap: at, volts: read * toVolts });
  }
  while (row <= lastRow && !isFilledPoint(sheet, row, gap, volts)) row++;
  if (row <= lastRow) {
    const values = { kind: 'below a blank row', row, tag } as const;
    const place = { sheet: sheet.name, row, column };
    record.remarks.push(factAt(place, factOf('record-point-left-out', 'warning', values)));
  }
  return voltsOrRemark(sheet, headerRow, volts, [record], remarks)[0];
}
