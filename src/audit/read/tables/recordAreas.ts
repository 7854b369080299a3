import { cellText } from '../../../cells/cell.ts';
import { cellAt } from '../../../cells/sheet.ts';
import { type RowSpan } from './found.ts';
import { isListRow, type ListRows } from './listRows.ts';
import { goesOn, type Points, recordBelow, type RecordBelow, surelyRecordBelow } from './recordBelow.ts';
import { recordTop } from './recordTop.ts';
import { isEmptyPoint, isFilledPoint } from './recordPoints.ts';
import { tagKey } from './tagKey.ts';

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
    running = running.filter((points) => row < points.firstRow || goesOn(list, row, points));
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
