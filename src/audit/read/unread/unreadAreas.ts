import { columnLetters } from '../../../cells/address.ts';
import { cellText, isBlank, type Cell } from '../../../cells/cell.ts';
import type { Sheet, Workbook } from '../../../cells/sheet.ts';
import type { NotRead } from '../../model/attention.ts';
import { measurand, sensitivity } from '../tables/dimensions.ts';
import type { FoundTable, Tables } from '../tables/found.ts';
import { parseHeader } from '../tables/header.ts';
import { isResultSheet } from '../tables/titleWords.ts';
import { tagKey } from '../tables/tagKey.ts';
import { unitOfText } from '../tables/unitRow.ts';
import { nearMeaning, type NearMeaning } from './nearMeaning.ts';
import { isProtective } from '../tables/vocabulary.ts';

/** Rows by sheet: those that calibration records and histories were read from, and those of a table that something is said of. */
export interface ReadRows {
  readonly read: RowsBySheet;
  readonly remarked: RowsBySheet;
}
type RowsBySheet = ReadonlyMap<string, ReadonlySet<number>>;

/** Rows above the first one of a record or history that hold its title and headers. */
const titleRows = 6;
/** Rows between two steps. */
const stride = 500;

/** What stands outside of all that was read and looks like a list. */
interface Area {
  readonly row: number;
  readonly column: number;
  readonly text: string;
  readonly looksLike: string;
  readonly severity: NotRead['severity'];
}

/**
 * Lists that were not read: outside of the tables, records and histories that were, a row of headers of which two or more
 * belong to quantities of the audit, or rows that begin with known tags and hold numbers. One entry for each stretch of rows.
 */
export function* unreadAreas(
  workbook: Workbook,
  tables: Tables,
  isTag: (key: string) => boolean,
  readRows: ReadRows,
): Generator<void, NotRead[], void> {
  const found: NotRead[] = [];
  for (const sheet of workbook.sheets) {
    if (isResultSheet(sheet)) continue;
    const areas = yield* areasOf(sheet, [tables.channels, tables.settings], isTag, readRows);
    const readHere = [tables.channels, tables.settings].some((table) => table.sheet === sheet);
    for (const { row, column, text, looksLike, severity } of areas) {
      found.push({
        what: readHere ? 'table' : 'sheet',
        text: readHere ? text : sheet.name,
        looksLike,
        severity,
        sheet: sheet.name,
        row,
        column: columnLetters(column),
      });
    }
  }
  return found;
}

function* areasOf(
  sheet: Sheet,
  tables: readonly FoundTable[],
  isTag: (key: string) => boolean,
  readRows: ReadRows,
): Generator<void, Area[], void> {
  const own = tables.filter((table) => table.sheet === sheet).map(usedBy);
  const read = readRows.read.get(sheet.name);
  const remarked = readRows.remarked.get(sheet.name);
  const areas: Area[] = [];
  let tagged: { first: number; column: number; rows: number; last: number } | null = null;
  /** Last row of a stretch of which its own remark tells that it was not read. */
  let told: number | null = null;
  const close = (): void => {
    if (tagged && tagged.rows > 1) {
      areas.push({
        row: tagged.first,
        column: tagged.column,
        text: `rows ${tagged.first} to ${tagged.last}`,
        looksLike: 'a list of channels',
        severity: 'warning',
      });
    }
    tagged = null;
  };
  for (const [index, cells] of sheet.rows.entries()) {
    if (index % stride === stride - 1) yield;
    const row = index + 1;
    if (cells.length === 0) continue;
    if (remarked?.has(row)) told = row;
    const free = freeColumns(own, row, cells);
    if (free.length === 0 || isOfRecord(read, row)) continue;
    const head = headOf(cells, free);
    if (head) {
      close();
      if (hasRowsBelow(sheet, row, free)) areas.push({ row, ...head });
      continue;
    }
    const at = free.find((column) => isTagCell(cells[column - 1], isTag));
    if (at === undefined || !free.some((column) => typeof cells[column - 1] === 'number')) continue;
    if (areas.some((area) => area.row < row)) continue;
    if (told === row - 1) {
      told = row;
      continue;
    }
    if (tagged) {
      tagged.rows++;
      tagged.last = row;
    } else tagged = { first: row, column: at, rows: 1, last: row };
  }
  close();
  return areas;
}

/** The columns that a table uses in its rows. */
interface Used {
  readonly top: number;
  readonly bottom: number;
  readonly left: number;
  readonly right: number;
}

function usedBy({ headerRow, lastRow, columns, unitColumns, unread }: FoundTable): Used {
  const own = [...columns.values(), ...unitColumns, ...unread].map(({ column }) => column);
  return { top: headerRow, bottom: lastRow, left: Math.min(...own), right: Math.max(...own) };
}

const nothing: readonly number[] = [];

/** Columns of a row that hold something outside of the tables that were read. */
function freeColumns(used: readonly Used[], row: number, cells: readonly Cell[]): readonly number[] {
  let free: number[] | undefined;
  for (let column = 1; column <= cells.length; column++) {
    const table = used.find(
      ({ top, bottom, left, right }) => row >= top && row <= bottom && column >= left && column <= right,
    );
    if (table) column = table.right;
    else if (!isBlank(cells[column - 1] ?? null)) (free ??= []).push(column);
  }
  return free ?? nothing;
}

function isOfRecord(read: ReadonlySet<number> | undefined, row: number): boolean {
  if (!read) return false;
  for (let below = row; below <= row + titleRows; below++) if (read.has(below)) return true;
  return false;
}

/** A row of headers, two or more of which belong to quantities of the audit, or are in their units. */
function headOf(cells: readonly Cell[], free: readonly number[]): Omit<Area, 'row'> | undefined {
  const meant: NearMeaning[] = [];
  let units = 0;
  let first: { column: number; text: string } | undefined;
  for (const column of free) {
    const cell = cells[column - 1];
    if (typeof cell !== 'string' || cell.length > 120) continue;
    const header = parseHeader(cell, (key) => nearMeaning(key) !== null);
    const near = nearMeaning(header.name);
    // Of a unit in a column of its own, such as mV/(mm/s), the divisor is no unit of a header.
    const inUnit =
      header.unit !== undefined &&
      header.name !== '' &&
      !unitOfText(cell) &&
      [...sensitivity, ...measurand].includes(header.unit.dimension);
    if (!near && !inUnit) continue;
    if (near && !meant.some(({ id }) => id === near.id)) meant.push(near);
    if (inUnit) units++;
    first ??= { column, text: header.text };
  }
  const judging = meant.filter(({ id }) => id !== 'tag' && isProtective(id));
  if (!first || (meant.length < 2 && units < 2) || (judging.length === 0 && units === 0)) return undefined;
  const ofSettings = judging.some(({ id }) => ['configured', 'alert', 'danger'].includes(id));
  return {
    ...first,
    looksLike: ofSettings ? 'monitor settings' : 'a list of channels',
    severity: 'critical',
  };
}

/** Whether below a row of headers, in their columns, a row has a number beside something else. */
function hasRowsBelow(sheet: Sheet, row: number, columns: readonly number[]): boolean {
  for (let below = row + 1; below <= row + 3; below++) {
    const cells = sheet.rows[below - 1] ?? [];
    const filled = columns.flatMap((column) => cells[column - 1] ?? []).filter((cell) => !isBlank(cell));
    if (filled.length > 1 && filled.some((cell) => typeof cell === 'number')) return true;
  }
  return false;
}

function isTagCell(cell: Cell | undefined, isTag: (key: string) => boolean): boolean {
  if (cell === undefined || cell === null || typeof cell === 'object') return false;
  const key = tagKey(cellText(cell));
  return key !== '' && !/^\d{1,3}$/u.test(key) && isTag(key);
}
