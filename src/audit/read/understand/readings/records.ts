import { columnLetters } from '../../../../cells/address.ts';
import { cellText, isBlank, type Cell } from '../../../../cells/cell.ts';
import type { Sheet } from '../../../../cells/sheet.ts';
import { headerKey } from '../../tables/header.ts';
import { isHeadOfRecord } from '../../tables/searchHeaders.ts';
import { recordAreas } from '../../tables/recordAreas.ts';
import { looksLikeHeading } from '../../join/tagIndex.ts';
import { tagKey } from '../../tables/tagKey.ts';
import { placeIn, recordsOf, type Block, type Place } from '../blocks/block.ts';
import { cellOfBlock } from '../fields/valueFacts.ts';
import { meaning } from '../meaning.ts';
import type { TableRead } from '../tables/tableRead.ts';
import { isAmount, isQuantityText, labelOf } from '../blocks/cellKind.ts';
import { conceptsIn } from '../vocabulary/lexicon.ts';
import { readDate } from '../../rows/date.ts';
import { machineReader } from './lineMachines.ts';
import { isSignature, isSpare, isTotal } from './cellValue.ts';

/** What a line of a table is. */
type LineKind =
  'channel' | 'empty' | 'heading' | 'total' | 'spare' | 'no tag' | 'record' | 'header again' | 'totals row';

/** A line of a table (a row, a column or a form) with the name in it. */
export interface Line {
  readonly table: TableRead;
  readonly record: number;
  readonly is: LineKind;
  /** When it was tested, in days since 1970-01-01. */
  readonly day: number | null;
  /** Its tag as it is written, with the probe's letter where a line holds two. */
  readonly tag: string;
  readonly machine: string;
  readonly place: Place;
}

/** The lines of a table, each told for what it is. */
export function* linesOf(
  table: TableRead,
  sheets: ReadonlyMap<string, Sheet>,
  isKnown: (tag: string) => boolean,
  leftOut: ReadonlySet<string>,
): Generator<Line, void, void> {
  const { lane, tag, claims } = table;
  const { block } = lane;
  if (!tag) return;
  const records = calibrationRows(table);
  const machineOf = machineReader(table, sheets);
  const date = claims.get('calibratedOn');
  let filledOnes: ReadonlySet<string> | undefined;
  let above = '';
  const others = [...claims.values()].filter(({ field }) => field !== tag.field);
  const core = others.filter(({ meaning: id }) => meaning(id).needed);
  const hasAmount = (record: number) =>
    core.some(({ field }) => {
      const cell = cellOfBlock(block, sheets, field.place, record);
      return isAmount(cell) || (typeof cell === 'string' && isQuantityText(cell));
    });
  const repeated = headerKey(tag.field.parts.at(-1)?.text ?? '');
  for (const record of recordsOf(block)) {
    const place = placeIn(block, tag.field.place, record);
    if (!place) continue;
    const own = cellText(cellOfBlock(block, sheets, tag.field.place, record)).replace(/\s+/gu, ' ');
    const probe = tag.probe ? cellText(cellOfBlock(block, sheets, tag.probe.place, record)).trim() : '';
    const written = own === '' && probe !== '' ? above : own;
    if (own !== '') above = own;
    let filled = 0;
    let numbers = 0;
    let measured = 0;
    for (const { field, meaning: id } of others) {
      if (isBlank(cellOfBlock(block, sheets, field.place, record))) continue;
      filled++;
      if (id === 'measured') measured++;
      if (meaning(id).holds === 'number') numbers++;
    }
    const axis =
      lane.axis !== null && !lane.ofAxis.has(tag.field)
        ? ` ${lane.axis.name}`
        : probe === ''
          ? ''
          : ` ${probe}`;
    const line = (is: LineKind): Line => ({
      table,
      record,
      is,
      tag: written === '' ? '' : `${written}${axis}`,
      machine: machineOf(record),
      place,
      day: date ? dayAt(cellOfBlock(block, sheets, date.field.place, record)) : null,
    });
    if (leftOut.size > 0 && lineKeys(block, place).some((key) => leftOut.has(key))) continue;
    if (records.has(record)) yield line('record');
    else if (block.table?.totalsRow && record === block.table.area.bottom) yield line('totals row');
    else if (written === '' && filled === 0) yield line('empty');
    else if (written === '') yield line(numbers > 0 ? 'no tag' : 'empty');
    else if (isTotal(written) && !(/\d/u.test(written) && isKnown(written))) yield line('total');
    else if (isSpare(written) && measured === 0) yield line('spare');
    else if (written.length <= 2 * repeated.length + 8 && headerKey(written) === repeated)
      yield line('header again');
    else if (
      filled === 0 &&
      ((filledOnes ??= filledTags(table, sheets)).has(tagKey(written)) ||
        conceptsIn(written).size > 0 ||
        looksLikeHeading(written, isKnown(written)))
    )
      yield line('heading');
    else if (filled < 2 && isLabelText(written) && !isKnown(written)) yield line('heading');
    else if (isSignature(written) && !isKnown(written) && !hasAmount(record)) yield line('heading');
    else yield line('channel');
  }
}

/** How a person's answer can name a line: by its row, its tag's cell, or its column where channels are columns. */
function lineKeys({ lies }: Block, { sheet, row, column }: Place): readonly string[] {
  const letters = columnLetters(column);
  return lies === 'columns' ? [`${sheet}!${letters}`] : [`${sheet}!${row}`, `${sheet}!${letters}${row}`];
}

function dayAt(cell: Cell): number | null {
  const read = cell === null ? undefined : readDate(cell);
  return read && 'day' in read ? read.day : null;
}

/** Tags of a table beside which a number stands in some line. */
function filledTags(
  { lane, tag, claims }: TableRead,
  sheets: ReadonlyMap<string, Sheet>,
): ReadonlySet<string> {
  const numbers = [...claims.values()].filter(({ meaning: id }) => meaning(id).holds === 'number');
  const found = new Set<string>();
  if (!tag) return found;
  for (const record of recordsOf(lane.block)) {
    if (numbers.some(({ field }) => !isBlank(cellOfBlock(lane.block, sheets, field.place, record)))) {
      found.add(tagKey(cellText(cellOfBlock(lane.block, sheets, tag.field.place, record))));
    }
  }
  return found;
}

/** Tags of a table beside which anything stands in their line: what stands alone can be a heading. */
export function tagsBesideOthers(
  { lane, tag }: TableRead,
  sheets: ReadonlyMap<string, Sheet>,
): ReadonlySet<string> {
  const found = new Set<string>();
  if (!tag) return found;
  const others = lane.fields.filter((field) => field !== tag.field);
  for (const record of recordsOf(lane.block)) {
    if (others.some((field) => !isBlank(cellOfBlock(lane.block, sheets, field.place, record))))
      found.add(tagKey(cellText(cellOfBlock(lane.block, sheets, tag.field.place, record))));
  }
  return found;
}

/** Whether a text in the column of tags is a label, as above a record that stands below a list: `Date`. */
function isLabelText(text: string): boolean {
  const label = labelOf(text);
  if (!label || /\d/u.test(text)) return false;
  return (
    label.standard.length > 0 ||
    label.concepts.get('date') === 'strong' ||
    label.concepts.get('sensitivity') === 'strong' ||
    label.concepts.get('remark') === 'strong' ||
    label.concepts.get('machine') === 'strong'
  );
}

/** Rows of calibration records that stand below the rows of a table, in its columns. */
function calibrationRows({ lane, tag, claims }: TableRead): ReadonlySet<number> {
  const { block } = lane;
  if (block.lies !== 'rows' || !tag) return new Set();
  const numbers = [...claims.values()].filter(({ meaning: id }) => meaning(id).holds === 'number');
  const columns = [...claims.values()].map(({ field }) => field.place.at);
  const list = {
    sheet: block.sheet,
    headerRow: block.header[1],
    left: Math.min(...columns),
    right: Math.max(...columns),
    tag: tag.field.place.at,
    numbers: numbers.map(({ field }) => field.place.at),
    required: numbers.filter(({ meaning: id }) => meaning(id).needed).map(({ field }) => field.place.at),
  };
  const recordRows: number[] = [];
  for (let row = block.span[0]; row <= block.span[1]; row++)
    if (isHeadOfRecord(block.sheet.rows[row - 1] ?? [])) recordRows.push(row);
  const areas = recordAreas(list, {
    recordRows,
    top: block.span[0],
    bottom: block.span[1],
    areaEnd: block.table?.area.bottom ?? 0,
    repeats: block.repeats,
    isHeader: () => false,
  });
  const rows = new Set<number>();
  for (const { top, bottom } of areas) for (let row = top; row <= bottom; row++) rows.add(row);
  return rows;
}
