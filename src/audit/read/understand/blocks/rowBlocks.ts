import { cellText, isBlank } from '../../../../cells/cell.ts';
import { cellAt, type Sheet, type SheetTable } from '../../../../cells/sheet.ts';
import { headerKey } from '../../tables/header.ts';
import { axisOf } from '../vocabulary/valueWords.ts';
import type { Block, FieldPlace } from './block.ts';
import { isAmount, labelOf } from './cellKind.ts';
import { headerPath } from './headerPath.ts';
import { bandsAt, repeatsRow, type HeaderBand } from './headerRows.ts';
import { isUnderHeaders } from './unitRows.ts';
import { statedUnit } from '../vocabulary/statedUnit.ts';

/** Columns of one table under a band of headers, in order. */
interface Segment {
  readonly band: HeaderBand;
  readonly columns: readonly number[];
  readonly table: SheetTable | null;
}

/** Rows that are looked at in one step. */
const stride = 2_000;

/** Every table of a sheet whose records are rows, found in one pass over its rows. */
export function* rowBlocks(sheet: Sheet): Generator<void, Omit<Block, 'id'>[], void> {
  const segments: Segment[] = [];
  for (let row = 1; row <= sheet.rows.length; row++) {
    if (row % stride === 0) yield;
    const bands = bandsAt(sheet, row);
    for (const band of bands) segments.push(...segmentsOf(sheet, band));
    const [only, second] = bands;
    if (
      only &&
      !second &&
      only.right - only.left + 1 >= (sheet.rows[row - 1] ?? []).filter((cell) => cell !== null).length
    )
      row = only.last;
  }
  const repeats = new Map<Segment, Set<number>>();
  const own: Segment[] = [];
  for (const segment of segments) {
    const first = own.findLast((other) => overlaps(other, segment));
    const again = first !== undefined && isRepeat(sheet, first, segment);
    if (!first || !again) {
      own.push(segment);
      continue;
    }
    const rows = repeats.get(first) ?? new Set();
    for (let row = segment.band.first; row <= segment.band.last; row++) rows.add(row);
    repeats.set(first, rows);
  }
  return own.map((segment) => blockOf(sheet, segment, own, repeats.get(segment) ?? new Set()));
}

function overlaps(one: Segment, other: Segment): boolean {
  return one.columns.some((column) => other.columns.includes(column));
}

/** The same headers again, as a print-out repeats them; with a text of its own above it is a list of its own. */
function isRepeat(sheet: Sheet, first: Segment, again: Segment): boolean {
  if (first.columns.join() !== again.columns.join()) return false;
  if (first.band.core - first.band.first !== again.band.core - again.band.first) return false;
  const columns = first.columns.filter((column) => !isBlank(cellAt(sheet, first.band.core, column)));
  if (!repeatsRow(sheet, first.band.core, again.band.core, columns)) return false;
  return !isTitled(sheet, again);
}

/** Rows above a header that can hold the title of its list. */
const titleReach = 6;

/** Whether texts that are no records stand above a header, below the records of the list before it. */
function isTitled(sheet: Sheet, { band, columns }: Segment): boolean {
  for (let row = band.first - 1; row > Math.max(0, band.first - titleReach); row--) {
    const cells = sheet.rows[row - 1] ?? [];
    const own = columns.map((column) => cells[column - 1] ?? null).filter((cell) => !isBlank(cell));
    if (own.some(isAmount)) return false;
    if (own.length > 0 && own.length <= 3) return true;
  }
  return false;
}

function blockOf(
  sheet: Sheet,
  segment: Segment,
  all: readonly Segment[],
  repeats: ReadonlySet<number>,
): Omit<Block, 'id'> {
  const { band, columns, table } = segment;
  const from = Math.min(...columns);
  const below = all
    .filter((other) => other.band.first > band.last && overlaps(other, segment))
    .map((other) => other.band.first - 1);
  const lines = { sheet, first: band.first, last: band.last, from, rows: true };
  const ofUnits = new Set<number>();
  for (let row = band.core + 1; row <= band.last; row++)
    if (isUnderHeaders(sheet, row, band)) ofUnits.add(row);
  const header = (at: number) =>
    headerPath(lines, at).filter((part) => !ofUnits.has(part.row) || statedUnit(part.text) !== undefined);
  const fields = columns.map((at): FieldPlace => ({
    at,
    header: header(at),
    hidden: sheet.hiddenColumns?.has(at) === true,
  }));
  return {
    sheet,
    lies: 'rows',
    header: [band.first, band.last],
    fields,
    span: [
      band.last + 1,
      below.length > 0 ? withoutTitles(sheet, columns, band.last + 1, Math.min(...below)) : sheet.rows.length,
    ],
    forms: [],
    formUnits: [],
    unitLine: null,
    table,
    repeats,
  };
}

/** The last row of a list above another one: without the titles of that, which stand below a blank row. */
function withoutTitles(sheet: Sheet, columns: readonly number[], first: number, last: number): number {
  const filled = (row: number) =>
    columns.map((column) => sheet.rows[row - 1]?.[column - 1] ?? null).filter((cell) => !isBlank(cell));
  let top = last + 1;
  while (top > first && !filled(top - 1).some(isAmount)) top--;
  for (let row = top; row <= last; row++) if (filled(row).length === 0) return Math.max(first - 1, row - 1);
  return last;
}

/** The tables beside each other under one band: spreadsheet tables first, then runs that have names of their own. */
function segmentsOf(sheet: Sheet, band: HeaderBand): Segment[] {
  const tables = sheet.tables.filter(
    (table) => table.headerRow && table.area.top >= band.first && table.area.top <= band.last,
  );
  const filled: number[] = [];
  for (let column = band.left; column <= band.right; column++)
    if (headed(sheet, band, column)) filled.push(column);
  const segments: Segment[] = tables.map((table) => ({
    band,
    table,
    columns: filled.filter((column) => column >= table.area.left && column <= table.area.right),
  }));
  const rest = filled.filter(
    (column) => !tables.some(({ area }) => column >= area.left && column <= area.right),
  );
  for (const columns of runsOf(sheet, band, rest)) segments.push({ band, table: null, columns });
  return segments.filter(({ columns }) => columns.length > 0);
}

function headed(sheet: Sheet, band: HeaderBand, column: number): boolean {
  for (let row = band.first; row <= band.last; row++) if (!isBlank(cellAt(sheet, row, column))) return true;
  return headerPath({ sheet, first: band.first, last: band.last, from: band.left, rows: true }, column).some(
    ({ covers }) => covers === 'merged',
  );
}

/** Runs of columns with a name column each; a run without one belongs to the run on its left. */
function runsOf(sheet: Sheet, band: HeaderBand, columns: readonly number[]): number[][] {
  const runs: number[][] = [];
  for (const column of columns) {
    const last = runs.at(-1);
    const isNext = last !== undefined && (last.at(-1) ?? 0) === column - 1;
    if (last && isNext && !startsAnew(sheet, band, last, column)) last.push(column);
    else runs.push([column]);
  }
  const joined: number[][] = [];
  const namedRuns = runs.filter((run) => run.some((column) => isName(sheet, band, column))).length;
  for (const run of runs) {
    const last = joined.at(-1);
    const alone =
      run.some((column) => isName(sheet, band, column)) &&
      namedRuns > 1 &&
      (last?.some((column) => isName(sheet, band, column)) ?? true);
    if (last && !alone && isAligned(sheet, band, last, run)) last.push(...run);
    else joined.push([...run]);
  }
  return joined;
}

/** Whether a column names records by a header that its run has already: a second table right beside it. */
function startsAnew(sheet: Sheet, band: HeaderBand, run: readonly number[], column: number): boolean {
  if (!isName(sheet, band, column) || axisAbove(sheet, band, column)) return false;
  const key = headerKey(cellText(cellAt(sheet, band.core, column)));
  return run.length > 1 && run.some((other) => headerKey(cellText(cellAt(sheet, band.core, other))) === key);
}

function axisAbove(sheet: Sheet, band: HeaderBand, column: number): boolean {
  return headerPath({ sheet, first: band.first, last: band.last, from: band.left, rows: true }, column).some(
    ({ text }) => axisOf(text) !== undefined,
  );
}

function isName(sheet: Sheet, band: HeaderBand, column: number): boolean {
  for (let row = band.first; row <= band.last; row++) {
    const label = labelOf(cellAt(sheet, row, column));
    if (!label || label.unit !== null) continue;
    if (label.standard.some(({ id }) => id === 'tag') || label.concepts.get('tag') === 'strong') return true;
    if (label.concepts.has('tag') && isTwice(sheet, row, label.text)) return true;
  }
  return false;
}

/** Whether a text heads two columns of a row: what is weak by itself names two lists. */
function isTwice(sheet: Sheet, row: number, text: string): boolean {
  const key = headerKey(text);
  return (
    (sheet.rows[row - 1] ?? []).filter((cell) => typeof cell === 'string' && headerKey(cell) === key).length >
    1
  );
}

/** Rows that are looked at for whether two runs have the same records. */
const compared = 60;

/** Whether two runs of columns are filled in the same rows, as those of one table are. */
function isAligned(
  sheet: Sheet,
  band: HeaderBand,
  one: readonly number[],
  other: readonly number[],
): boolean {
  let both = 0;
  let rows = 0;
  for (let row = band.last + 1; row <= Math.min(sheet.rows.length, band.last + compared); row++) {
    const has = (columns: readonly number[]) =>
      columns.some((column) => !isBlank(cellAt(sheet, row, column)));
    const [left, right] = [has(one), has(other)];
    if (left || right) rows++;
    if (left && right) both++;
  }
  return rows > 0 && both * 2 >= rows;
}
