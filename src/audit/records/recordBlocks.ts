import { columnLetters } from '../../cells/address.ts';
import type { Sheet } from '../../cells/sheet.ts';
import { tagKey } from '../join/tagIndex.ts';
import { cellAt, cellText, isBlank } from '../tables/found.ts';
import { headerKey } from '../tables/header.ts';
import { tagWords } from '../tables/tagWords.ts';
import type { RawRecord, RecordRemark } from './rawRecord.ts';
import { isEmptyPoint, recordNumber } from './recordCells.ts';
import { type RecordColumn, withUnitRow } from './recordHeaders.ts';
import { unitOrRemark } from './recordUnits.ts';
import { asFound, asLeft } from './series.ts';

/** Rows above a block's header in which its tag may stand. */
const reach = 4;
const tagKeys = new Set(['tag', 'probe', ...tagWords].map(headerKey));
/** `Tag: P-101X`, `Probe P-101X`. */
const labelled =
  /^\s*(?:tag(?: no\.?| number)?|probe|channel)\s*[:#-]?\s+(\S.*)$|^\s*(?:tag|probe|channel)\s*:\s*(\S.*)$/iu;

/** The record of a block: a gap column and a volts column of one probe, whose tag stands above or is the sheet's name. */
export function recordOfBlock(
  sheet: Sheet,
  headerRow: number,
  pair: readonly [gap: RecordColumn, volts: RecordColumn],
  isTag: (key: string) => boolean,
  remarks: RecordRemark[],
): RawRecord | undefined {
  const { columns, firstRow } = withUnitRow(sheet, headerRow, pair);
  const [gap, volts] = columns;
  if (!gap || !volts) return undefined;
  const right = volts.column + 1;
  const tag = tagAbove(sheet, headerRow, gap.column, right, isTag) ?? tagOfSheet(sheet, isTag);
  const place = { sheet: sheet.name, row: headerRow, column: columnLetters(gap.column) };
  if (isEmptyPoint(sheet, firstRow, gap, volts)) return undefined;
  if (tag === undefined) {
    remarks.push({
      rule: 'record-without-tag',
      severity: 'warning',
      message: `'${gap.header}' and '${volts.header}' look like a calibration record, but no tag of the channel list stands above them. Write 'Tag' and the tag above the headers.`,
      ...place,
    });
    return undefined;
  }
  const gapUnit = unitOrRemark(sheet, headerRow, gap, remarks);
  if (!gapUnit) return undefined;
  const record: RawRecord = {
    kind: 'record',
    tag,
    series: seriesAbove(sheet, headerRow, gap.column, right),
    temperature: '',
    takenOn: null,
    gapUnit,
    points: [],
    remarks: [],
    sheet: sheet.name,
    row: firstRow,
    column: columnLetters(gap.column),
  };
  const toVolts = volts.unit ? volts.unit.factor : 1;
  for (let row = firstRow; row <= sheet.rows.length && !isEmptyPoint(sheet, row, gap, volts); row++) {
    const at = recordNumber(sheet, row, gap, record.remarks);
    const read = recordNumber(sheet, row, volts, record.remarks);
    if (at !== null && read !== null) record.points.push({ row, gap: at, volts: read * toVolts });
  }
  return record;
}

/** Looks upwards from the header, nearest row first: a label with the tag beside or behind it, or a tag alone. */
function tagAbove(
  sheet: Sheet,
  headerRow: number,
  left: number,
  right: number,
  isTag: (key: string) => boolean,
): string | undefined {
  for (let row = headerRow - 1; row >= Math.max(1, headerRow - reach); row--) {
    for (let column = Math.max(1, left - 1); column <= right; column++) {
      const text = cellText(cellAt(sheet, row, column));
      if (text === '' || text.length > 80) continue;
      if (isTag(tagKey(text))) return text;
      const behind = labelled.exec(text);
      const named = behind?.[1] ?? behind?.[2];
      if (named !== undefined && (isTag(tagKey(named)) || row === headerRow - 1)) return named.trim();
      if (!tagKeys.has(headerKey(text))) continue;
      const beside = cellAt(sheet, row, column + 1);
      if (!isBlank(beside)) return cellText(beside);
    }
  }
  return undefined;
}

function tagOfSheet(sheet: Sheet, isTag: (key: string) => boolean): string | undefined {
  return isTag(tagKey(sheet.name)) ? sheet.name : undefined;
}

function seriesAbove(sheet: Sheet, headerRow: number, left: number, right: number): string {
  for (let row = headerRow - 1; row >= Math.max(1, headerRow - reach); row--) {
    for (let column = left; column <= right; column++) {
      const key = headerKey(cellText(cellAt(sheet, row, column)).slice(0, 80));
      if (key.includes('asleft')) return asLeft;
      if (key.includes('asfound')) return asFound;
    }
  }
  return asFound;
}
