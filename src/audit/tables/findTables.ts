import { columnLetters } from '../../cells/address.ts';
import type { Sheet, SheetTable, Workbook } from '../../cells/sheet.ts';
import { AuditRefused } from '../refused.ts';
import { applyMap, type ColumnMap, type TableMap } from './columnMap.ts';
import { isSameTable, type FoundTable } from './found.ts';
import { headersIn, isTagHeader, matchHeaders, quoteHeaders, type HeaderMatch } from './headerRows.ts';
import { isResultSheet } from './resultSheet.ts';
import { unitRowBelow } from './unitRow.ts';
import { columnsOf, type TableKind } from './vocabulary.ts';

const titles: Readonly<Record<TableKind, string>> = {
  channels: 'channel list',
  settings: 'table of monitor settings',
};

/**
 * Finds the channel list and the monitor settings of a workbook by their headers: on any sheet, below any titles, in
 * any column order. One table may be both.
 * @throws AuditRefused where a table is missing, stands twice, or two of its columns mean the same.
 */
export function findTables(workbook: Workbook, map: ColumnMap = {}): Record<TableKind, FoundTable> {
  const matches = workbook.sheets
    .filter((sheet) => !isResultSheet(sheet))
    .flatMap(tagRows)
    .flatMap(matchesIn);
  const channels = choose('channels', workbook, matches, map);
  const settings = choose('settings', workbook, matches, map);
  refuseSharedColumn(channels, settings);
  return { channels, settings };
}

/** A column of a table that is both can have one meaning only. */
function refuseSharedColumn(channels: FoundTable, settings: FoundTable): void {
  if (!isSameTable(channels, settings)) return;
  for (const [id, column] of channels.columns) {
    const other = [...settings.columns.values()].find((candidate) => candidate.column === column.column);
    if (!other || id === 'tag') continue;
    const names = `'${nameOf('channels', id)}' and '${nameOf('settings', other.id)}'`;
    throw new AuditRefused(
      `Sheet '${channels.sheet.name}', row ${channels.headerRow}: column ${columnLetters(column.column)} '${column.header}' could be both ${names}. ` +
        `Rename it, or name the right one in a column map.`,
    );
  }
}

function nameOf(kind: TableKind, id: string): string {
  return columnsOf(kind)[id]?.name ?? id;
}

interface TagRow {
  readonly sheet: Sheet;
  readonly row: number;
  readonly tagColumns: readonly number[];
}

function tagRows(sheet: Sheet): TagRow[] {
  const found: TagRow[] = [];
  sheet.rows.forEach((cells, index) => {
    let tagColumns: number[] | undefined;
    for (let column = 1; column <= cells.length; column++) {
      const cell = cells[column - 1];
      if (typeof cell === 'string' && isTagHeader(cell)) (tagColumns ??= []).push(column);
    }
    if (tagColumns) found.push({ sheet, row: index + 1, tagColumns });
  });
  return found;
}

function matchesIn({ sheet, row, tagColumns }: TagRow): HeaderMatch[] {
  return stretches(sheet, row, tagColumns).flatMap(({ left, right, table }) => {
    const headers = headersIn(sheet, row, left, right);
    const kinds = ['channels', 'settings'] as const;
    return kinds.map((kind) => ({ ...matchHeaders(kind, sheet, row, headers), ...(table ? { table } : {}) }));
  });
}

interface Stretch {
  readonly left: number;
  readonly right: number;
  readonly table?: SheetTable;
}

/** The parts of a row that can each be one table's header: spreadsheet tables first, else runs between blank cells. */
function stretches(sheet: Sheet, row: number, tagColumns: readonly number[]): Stretch[] {
  const tables = sheet.tables.filter((table) => table.headerRow && table.area.top === row);
  const parts: Stretch[] = tables.map((table) => ({ left: table.area.left, right: table.area.right, table }));
  const covered = (column: number) => parts.some((part) => column >= part.left && column <= part.right);
  const rest = tagColumns.filter((column) => !covered(column));
  if (tables.length === 0 && rest.length === 1) return [{ left: 1, right: 16_384 }];
  const cells = sheet.rows[row - 1] ?? [];
  const filled = (column: number) => typeof cells[column - 1] === 'string' && cells[column - 1] !== '';
  for (const column of rest) {
    if (covered(column)) continue;
    let left = column;
    let right = column;
    while (left > 1 && filled(left - 1) && !covered(left - 1)) left--;
    while (filled(right + 1) && !covered(right + 1)) right++;
    parts.push({ left, right });
  }
  return parts.filter((part) => tagColumns.some((column) => column >= part.left && column <= part.right));
}

function choose(
  kind: TableKind,
  workbook: Workbook,
  all: readonly HeaderMatch[],
  map: ColumnMap,
): FoundTable {
  const said = map[kind];
  const sheet = said?.sheet === undefined ? undefined : sheetNamed(workbook, said.sheet, kind);
  let candidates = all.filter((match) => match.kind === kind && (!sheet || match.sheet === sheet));
  if (said?.headerRow !== undefined) candidates = atRow(kind, workbook, sheet, said.headerRow, candidates);
  const mapped = applyWherePossible(candidates, said);
  const complete = mapped.filter((match) => match.missing.length === 0);
  const [first, ...others] = complete;
  if (!first) throw new AuditRefused(nothingFits(kind, workbook, mapped));
  const repeats = others.filter((other) => other.sheet === first.sheet && sameColumns(first, other));
  const rivals = others.filter((other) => !repeats.includes(other));
  if (rivals.length > 0) throw new AuditRefused(twoFit(kind, [first, ...rivals]));
  const [clash] = first.clashes;
  if (clash) {
    throw new AuditRefused(
      `Sheet '${first.sheet.name}', row ${first.row}: several columns could be '${clash.name}': ${quoteHeaders(clash.headers)}. ` +
        `Rename all but one, or name the right one in a column map. Headers seen: ${quoteHeaders(first.headers)}.`,
    );
  }
  return bounded(first, all, new Set(repeats.map((repeat) => repeat.row)));
}

/** The matches with the map put in; those it can't be applied to do not count while it fits another. */
function applyWherePossible(candidates: readonly HeaderMatch[], map: TableMap | undefined): HeaderMatch[] {
  const mapped: HeaderMatch[] = [];
  let refusal: AuditRefused | undefined;
  for (const match of candidates) {
    try {
      mapped.push(applyMap(match, map));
    } catch (error) {
      if (!(error instanceof AuditRefused)) throw error;
      refusal ??= error;
    }
  }
  if (refusal && mapped.length === 0) throw refusal;
  return mapped;
}

function sheetNamed(workbook: Workbook, name: string, kind: TableKind): Sheet {
  const sheet = workbook.sheets.find((candidate) => candidate.name.toLowerCase() === name.toLowerCase());
  if (sheet) return sheet;
  const names = workbook.sheets.map((candidate) => `'${candidate.name}'`).join(', ');
  throw new AuditRefused(`Column map, ${kind}: there is no sheet '${name}'. The sheets are: ${names}.`);
}

function atRow(
  kind: TableKind,
  workbook: Workbook,
  sheet: Sheet | undefined,
  row: number,
  candidates: readonly HeaderMatch[],
): HeaderMatch[] {
  const there = candidates.filter((match) => match.row === row);
  if (there.length > 0) return there;
  const [only, second] = workbook.sheets;
  const on = sheet ?? (second ? undefined : only);
  if (!on) throw new AuditRefused(`Column map, ${kind}: name the sheet beside header row ${row}.`);
  const headers = headersIn(on, row, 1, 16_384);
  if (headers.length === 0)
    throw new AuditRefused(`Column map, ${kind}: sheet '${on.name}' has no headers in row ${row}.`);
  return [matchHeaders(kind, on, row, headers)];
}

function sameColumns(a: HeaderMatch, b: HeaderMatch): boolean {
  if (a.columns.size !== b.columns.size) return false;
  return [...a.columns].every(([id, column]) => b.columns.get(id)?.column === column.column);
}

function nothingFits(kind: TableKind, workbook: Workbook, near: readonly HeaderMatch[]): string {
  const closest = near.toSorted(
    (a, b) => a.missing.length - b.missing.length || b.columns.size - a.columns.size,
  )[0];
  if (!closest) {
    const sheets = workbook.sheets.map((sheet) => `'${sheet.name}'`).join(', ') || 'none';
    return `No ${titles[kind]} was found: no row has a header 'tag'. Sheets looked at: ${sheets}.`;
  }
  const missing = closest.missing.map((name) => `'${name}'`).join(', ');
  return (
    `No ${titles[kind]} was found: sheet '${closest.sheet.name}', row ${closest.row} comes closest but has no column ${missing}. ` +
    `Headers seen: ${quoteHeaders(closest.headers)}. Rename a header, or name the column in a column map.`
  );
}

function twoFit(kind: TableKind, matches: readonly HeaderMatch[]): string {
  const places = matches.map((match) => `sheet '${match.sheet.name}' row ${match.row}`).join(' and ');
  const [first] = matches;
  return (
    `More than one ${titles[kind]} was found: ${places}. Name one in a column map ({"${kind}": {"sheet": "…", "headerRow": …}}). ` +
    `Headers seen: ${first ? quoteHeaders(first.headers) : ''}.`
  );
}

function bounded(
  match: HeaderMatch,
  all: readonly HeaderMatch[],
  repeatedHeaders: ReadonlySet<number>,
): FoundTable {
  const { sheet, row, table } = match;
  const below = all.filter(
    (other) =>
      other.sheet === sheet &&
      other.row > row &&
      other.columns.size >= 3 &&
      !repeatedHeaders.has(other.row) &&
      other.left <= match.right &&
      other.right >= match.left,
  );
  const end = Math.min(sheet.rows.length, ...below.map((other) => other.row - 1));
  const lastRow = table ? Math.min(end, table.area.bottom - (table.totalsRow ? 1 : 0)) : end;
  const units = unitRowBelow(match, lastRow);
  return {
    kind: match.kind,
    sheet,
    headerRow: row,
    firstRow: row + (units ? 2 : 1),
    lastRow,
    columns: units ?? match.columns,
    unitColumns: match.unitColumns,
    repeatedHeaders,
    ignored: match.ignored,
  };
}
