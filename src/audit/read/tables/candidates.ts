import type { TableMap } from '../../model/columnMap.ts';
import type { Sheet, SheetTable, Workbook } from '../../../cells/sheet.ts';
import { columnNumber } from '../../../cells/address.ts';
import { headerKey } from './header.ts';
import { headersIn, matchHeaders, type HeaderMatch } from './headerRows.ts';
import { inputSheets, type HeaderRows, type TagRow } from './searchHeaders.ts';
import type { TableKind } from './vocabulary.ts';

/** Every row that has a header of the tag column, read as the header of either table. */
export function candidateHeaders({ ofTags }: HeaderRows): HeaderMatch[] {
  return [...ofTags.values()].flat().flatMap(matchesIn);
}

/** Rows that a column map points at and that have no header of the tag column: its header row, or those with its headers. */
export function mappedHeaders(
  kind: TableKind,
  workbook: Workbook,
  sheet: Sheet | undefined,
  map: TableMap | undefined,
): HeaderMatch[] {
  if (!map) return [];
  const sheets = sheet ? [sheet] : inputSheets(workbook);
  const { headerRow } = map;
  if (headerRow !== undefined) return sheets.flatMap((on) => matchAt(kind, on, headerRow));
  const wanted = map.columns?.['tag'];
  if (!wanted || !Number.isNaN(columnNumber(wanted))) return [];
  const key = headerKey(wanted);
  return sheets.flatMap((on) => rowsWith(on, key).flatMap((row) => matchAt(kind, on, row)));
}

function matchAt(kind: TableKind, sheet: Sheet, row: number): HeaderMatch[] {
  const headers = headersIn(sheet, row, 1, 16_384);
  return headers.length === 0 ? [] : [matchHeaders(kind, sheet, row, headers)];
}

function rowsWith(sheet: Sheet, key: string): number[] {
  const rows: number[] = [];
  sheet.rows.forEach((cells, index) => {
    const there = cells.some(
      (cell) => typeof cell === 'string' && cell.length <= 250 && headerKey(cell) === key,
    );
    if (there && headersIn(sheet, index + 1, 1, 16_384).length > 1) rows.push(index + 1);
  });
  return rows;
}

/** One stretch of a row with a header of the tag column: what may head a table. */
export interface HeaderStretch extends Stretch {
  readonly sheet: Sheet;
  readonly row: number;
}

/** Every stretch of a row that has a header of the tag column, on sheets that are no results of ours. */
export function headerStretches({ ofTags }: HeaderRows): HeaderStretch[] {
  return [...ofTags.values()]
    .flat()
    .flatMap(({ sheet, row, tagColumns }) =>
      stretches(sheet, row, tagColumns).map((stretch) => ({ sheet, row, ...stretch })),
    );
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
