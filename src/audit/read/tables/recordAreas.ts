import { cellText, isBlank } from '../../../cells/cell.ts';
import { cellAt } from '../../../cells/sheet.ts';
import type { RowSpan } from './found.ts';
import { isListRow, type ListRows, isLabel, isText } from './listRows.ts';
import {
  recordContinues,
  type Points,
  recordBelow,
  type RecordBelow,
  surelyRecordBelow,
} from './recordBelow.ts';
import { isEmptyPoint, isFilledPoint, isNumber } from './recordParts.ts';
import { tagKey } from './tagKey.ts';
import { isProbeWord, isTagWord, labelledTag, longestTitle, namedTag, titleReach } from './titleWords.ts';

/** How a row above the headers of a record reads, from its title for sure to a row of the table for sure. */
type Reading = 'blank' | 'names a tag' | 'known tag' | 'line' | 'words' | 'numbers' | 'row of the table';

/** How much of a title must stand above a row for it to belong to the title too. */
const doubt: Readonly<Partial<Record<Reading, number>>> = { line: 1, words: 2, numbers: 3 };

/** The most doubtful rows that go with a row above them. */
const settles: Readonly<Partial<Record<Reading, number>>> = { blank: 1, 'known tag': 2, 'names a tag': 3 };

/** Rows below a header that may belong to its table. */
export interface Below extends RowSpan {
  /** Rows of the sheet that may head a calibration record. */
  readonly recordRows: readonly number[];
  /** Last row of a spreadsheet table, where it is one: its rows belong to it whatever stands in them. */
  readonly areaEnd: number;
  /** Rows that repeat the header, so that the table goes on below them. */
  readonly repeats: ReadonlySet<number>;
  /** Whether a row has headers of some list, and so is no title. */
  readonly isHeader: (row: number) => boolean;
}

/**
 * The rows of calibration records that stand below the rows of a table in its columns, titles included; the last goes on
 * to the end. Between two of them the table goes on: below its header repeated, or where a row can be nothing but its own.
 */
export function recordAreas(list: ListRows, below: Below): RowSpan[] {
  const { bottom, areaEnd, repeats, isHeader } = below;
  const rows = below.recordRows.filter(
    (row) => row > Math.max(below.top, areaEnd) && row <= bottom && !repeats.has(row),
  );
  const areas: RowSpan[] = [];
  let isKnown: ((tag: string, row: number) => boolean) | undefined;
  let from = below.top;
  for (const row of rows) {
    if (row <= from || !hasTag(list, from, row)) continue;
    const head = surelyRecordBelow(list, row);
    if (!head) continue;
    isKnown ??= tagsAbove(list, below.top, bottom);
    const isOpen = (at: number): boolean => at >= from && at > areaEnd && !isHeader(at);
    const top = recordTop(list, head, isOpen, isKnown);
    const resumed = tableGoesOn(list, head, rows, below);
    areas.push({ top, bottom: resumed.lastOfRecord });
    if (resumed.row === undefined) return areas;
    from = resumed.row;
  }
  return areas;
}

/** Whether the table has a row of its own between two rows, the second left out. */
function hasTag({ sheet, tag }: ListRows, from: number, to: number): boolean {
  for (let row = from; row < to; row++) if (cellText(cellAt(sheet, row, tag)) !== '') return true;
  return false;
}

/** Whether a tag stands in the table above a row. */
function tagsAbove(
  { sheet, tag }: ListRows,
  top: number,
  bottom: number,
): (tag: string, row: number) => boolean {
  const first = new Map<string, number>();
  for (let row = top; row <= bottom; row++) {
    const key = tagKey(cellText(cellAt(sheet, row, tag)));
    if (key !== '' && !first.has(key)) first.set(key, row);
  }
  return (text, row) => (first.get(tagKey(text)) ?? Infinity) < row;
}

/** The row from which the table goes on below records, and the last row of theirs above it; the end where it does not. */
function tableGoesOn(
  list: ListRows,
  first: RecordBelow,
  mayHead: readonly number[],
  { bottom, repeats }: Below,
): { readonly row: number | undefined; readonly lastOfRecord: number } {
  const { sheet } = list;
  const heads = new Set(mayHead);
  let head = first;
  let running = first.points;
  let lastOfRecord = first.row;
  for (let row = first.row + 1; row <= bottom; row++) {
    if (repeats.has(row)) return { row: row + 1, lastOfRecord };
    const next = heads.has(row) ? recordBelow(list, row) : undefined;
    if (next) {
      head = next;
      running = next.points;
      lastOfRecord = row;
      continue;
    }
    running = running.filter((points) => row < points.firstRow || recordContinues(list, row, points));
    const filled = running.filter(({ one, other }) => !isEmptyPoint(sheet, row, one, other));
    const taken = filled.some((points) => isPointOf(list, row, points));
    if (!taken && isListRow(list, row)) return { row, lastOfRecord };
    const isFilled = head.points.some(({ one, other }) => isFilledPoint(sheet, row, one, other));
    if (isFilled || filled.length > 0) lastOfRecord = row;
  }
  return { row: undefined, lastOfRecord: bottom };
}

/** Whether a row that is filled below a record is its own, even where it could be one of the table. */
function isPointOf(list: ListRows, row: number, { tag, one, other }: Points): boolean {
  if (tag !== undefined && isFilledPoint(list.sheet, row, one, other)) return true;
  const own = [one.column, other.column];
  return (
    (tag !== undefined || own.includes(list.tag)) && list.required.every((column) => own.includes(column))
  );
}

/**
 * The first row of the title above the headers of a record, or their own row. A row that may be one of the table is none
 * of the title: one line of text counts where a blank row or a line with a tag stands above it, more only below a line
 * with a tag. `isOpen` tells which rows may be a title at all, `isKnown` which tags stand in the table above a row.
 */
function recordTop(
  list: ListRows,
  head: RecordBelow,
  isOpen: (row: number) => boolean,
  isKnown: (tag: string, row: number) => boolean,
): number {
  let top = head.row;
  let most = 0;
  let above = head.row;
  let apart = false;
  // One row further than a title reaches: a blank row may end it there.
  for (let row = head.row - 1; row >= head.row - titleReach - 1 && isOpen(row); row--) {
    const reading = readingOf(list, head, row, isKnown);
    const settled = settles[reading];
    if (settled === undefined) {
      const more = doubt[reading];
      if (more === undefined || apart) break;
      most = Math.max(most, more);
      above = row;
      continue;
    }
    if (reading !== 'blank' && row < head.row - titleReach) break;
    apart = reading === 'blank';
    if (most > settled) {
      if (apart) continue;
      break;
    }
    top = apart ? above : row;
    above = top;
    most = 0;
  }
  return top;
}

function readingOf(
  list: ListRows,
  head: RecordBelow,
  row: number,
  isKnown: (tag: string, row: number) => boolean,
): Reading {
  const { sheet, tag, numbers } = list;
  const filled: number[] = [];
  for (let column = Math.max(1, Math.min(list.left, head.left - 1)); ; column++) {
    if (column > Math.max(list.right, head.right + 1)) break;
    if (!isBlank(cellAt(sheet, row, column))) filled.push(column);
  }
  if (filled.length === 0) return 'blank';
  const text = (column: number): string => cellText(cellAt(sheet, row, column)).slice(0, longestTitle + 1);
  const ofHead = filled.filter((column) => column >= head.left - 1 && column <= head.right + 1);
  const amounts = numbers.some((column) => isNumber(sheet, row, column));
  if (amounts && isText(sheet, row, tag) && mayBeTag(text(tag))) return 'row of the table';
  const named = ofHead.some(
    (column) => namedTag(text(column)) !== undefined || (isTagWord(text(column)) && text(column + 1) !== ''),
  );
  if (named) return 'names a tag';
  const known = ofHead.find((column) => {
    const told = isProbeWord(text(column)) ? text(column + 1) : labelledTag(text(column));
    return isKnown(text(column), row) || (told !== undefined && isKnown(told, row));
  });
  const ofNumber = filled.filter((column) => column !== known && isNumber(sheet, row, column));
  if (known !== undefined && ofNumber.length === 0) return 'known tag';
  const [first] = filled;
  if (first !== undefined && isText(sheet, row, first) && isLabel(text(first))) return 'line';
  if (ofNumber.length > 1) return 'row of the table';
  if (ofNumber.length > 0) return 'numbers';
  return filled.length <= head.points.length ? 'line' : 'words';
}

function mayBeTag(text: string): boolean {
  return /\d/u.test(text) && !isLabel(text) && namedTag(text) === undefined;
}
