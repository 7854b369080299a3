import { cellText, isBlank } from '../../../cells/cell.ts';
import { type Sheet, cellAt } from '../../../cells/sheet.ts';
import { headerKey } from './header.ts';
import { isText, type ListRows } from './listRows.ts';
import { type RecordColumn, withUnitRow } from './recordHeaders.ts';
import { recordParts, spanOf, isEmptyPoint, isFilledPoint, isNumber } from './recordParts.ts';
import { isTagWord } from './titleWords.ts';

/** A gap or a displacement with its volts, in the rows from its first point on. */
export interface Points {
  readonly firstRow: number;
  /** Column of the tags of a long table: every row has one, so that blank rows do not end it. */
  readonly tag: number | undefined;
  readonly one: RecordColumn;
  readonly other: RecordColumn;
}

/** A row of headers of records below a table, in its columns. */
export interface RecordBelow {
  readonly row: number;
  readonly left: number;
  readonly right: number;
  readonly points: readonly Points[];
}

/** Rows in which a block shows its first point: a slip or two may stand before it. */
const firstRows = 3;

/** The headers of records in a row, where some stand in the columns of the table, with those points that begin below. */
export function recordBelow(list: ListRows, row: number): RecordBelow | undefined {
  const { sheet } = list;
  const parts = recordParts(sheet, row, () => true);
  if (!parts.some((part) => overlaps(list, part))) return undefined;
  const points = parts
    .flatMap((part) => pointsOf(sheet, row, part) ?? [])
    .filter((one) => firstPoint(sheet, one) !== undefined);
  return { row, ...spanOf(parts.flat()), points };
}

/**
 * The same, where they are headers of records beyond doubt and neither a row of the table nor a second row of its
 * headers: no number stands in the row, a point stands below it, and what stands below is no row of the table.
 */
export function surelyRecordBelow(list: ListRows, row: number): RecordBelow | undefined {
  const { sheet, numbers } = list;
  if (numbers.some((column) => isNumber(sheet, row, column))) return undefined;
  const sure = recordParts(sheet, row, () => true).some(
    (part) => overlaps(list, part) && !repeatsHeader(list, row, part) && hasPoint(list, row, part),
  );
  return sure ? recordBelow(list, row) : undefined;
}

function overlaps({ left, right }: ListRows, part: readonly RecordColumn[]): boolean {
  const span = spanOf(part);
  return span.left <= right && span.right >= left;
}

/** Whether the points of a record go on in a row below its first. */
export function recordContinues({ sheet }: ListRows, row: number, { tag, one, other }: Points): boolean {
  if (isEmptyPoint(sheet, row, one, other)) return tag !== undefined;
  if (tag === undefined || isFilledPoint(sheet, row, one, other)) return true;
  return !isTagWord(cellText(cellAt(sheet, row, tag)));
}

/** Whether the texts are those of the table's own header. */
function repeatsHeader({ sheet, headerRow }: ListRows, row: number, part: readonly RecordColumn[]): boolean {
  const key = (at: number, column: number): string => headerKey(cellText(cellAt(sheet, at, column)));
  return part.every(({ column }) => key(row, column) === key(headerRow, column));
}

/** Where the points of a head begin, below a row of units and at most one blank row. */
function pointsOf(sheet: Sheet, row: number, part: readonly RecordColumn[]): Points | undefined {
  const { columns, firstRow } = withUnitRow(sheet, row, part);
  const one = columns.find(({ id }) => id === 'gap') ?? columns.find(({ id }) => id === 'displacement');
  const other = columns.find(({ id }) => id === 'volts');
  if (!one || !other) return undefined;
  const tag = columns.find(({ id }) => id === 'tag')?.column;
  return { tag, one, other, firstRow: isEmptyPoint(sheet, firstRow, one, other) ? firstRow + 1 : firstRow };
}

function hasPoint(list: ListRows, row: number, part: readonly RecordColumn[]): boolean {
  const points = pointsOf(list.sheet, row, part);
  const first = points && firstPoint(list.sheet, points);
  if (!points || first === undefined) return false;
  for (let at = points.firstRow; at <= first; at++) if (isOfTable(list, row, at, part)) return false;
  return true;
}

/** The row of the first point that can be read. */
function firstPoint(sheet: Sheet, { firstRow, tag, one, other }: Points): number | undefined {
  const end = tag === undefined ? firstRow + firstRows : firstRow + 1;
  for (let row = firstRow; row < end && !isEmptyPoint(sheet, row, one, other); row++)
    if (isFilledPoint(sheet, row, one, other)) return row;
  return undefined;
}

/** Whether a row below headers holds what they do not name: a tag, or numbers of columns that the table must have. */
function isOfTable(
  { sheet, tag, required }: ListRows,
  headers: number,
  row: number,
  part: readonly RecordColumn[],
): boolean {
  const own = part.find(({ id }) => id === 'tag');
  if (own && isBlank(cellAt(sheet, row, own.column))) return true;
  const isOther = !part.some(({ column }) => column === tag) && isText(sheet, row, tag);
  if (isOther && (!own || /\d/u.test(cellText(cellAt(sheet, row, tag))))) return true;
  const unnamed = (column: number): boolean => isBlank(cellAt(sheet, headers, column));
  if (unnamed(tag) && isText(sheet, row, tag)) return true;
  return required.some((column) => unnamed(column) && isNumber(sheet, row, column));
}
