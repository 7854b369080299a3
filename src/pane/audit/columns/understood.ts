import type { ColumnMap } from '../../../audit/model/columnMap.ts';
import { columnLetters } from '../../../cells/address.ts';
import type { Sheet, Workbook } from '../../../cells/sheet.ts';
import { AuditRefused } from '../../../audit/model/refused.ts';
import { applyMap } from '../../../audit/read/tables/applyMap.ts';
import { findTables } from '../../../audit/read/tables/findTables.ts';
import type { FoundColumn } from '../../../audit/read/tables/found.ts';
import {
  headersIn,
  isTagHeader,
  matchHeaders,
  withColumnsOfOther,
  type HeaderMatch,
} from '../../../audit/read/tables/headerRows.ts';
import { isResultSheet } from '../../../audit/read/tables/resultSheet.ts';
import { specOf, type TableKind } from '../../../audit/read/tables/vocabulary.ts';

/** One column of a sheet and what it was understood as. */
export interface ColumnUnderstood {
  readonly letters: string;
  readonly header: string;
  /** Standard name of its meaning; `null`: it is left alone. */
  readonly meaning: string | null;
  readonly unit: string | null;
  /** Whether its meaning has a unit that can be said. */
  readonly takesUnit: boolean;
}

export interface TableUnderstood {
  readonly kind: TableKind;
  readonly sheet: string;
  readonly headerRow: number;
  readonly columns: readonly ColumnUnderstood[];
  /** Standard names of required columns that are not there. */
  readonly missing: readonly string[];
  /** Standard names that several columns could be. */
  readonly clashes: readonly string[];
}

export interface Understood {
  readonly channels: TableUnderstood | null;
  readonly settings: TableUnderstood | null;
  /** Why the audit can't begin; `null` where both tables are clear. */
  readonly refusal: string | null;
}

const lastColumn = 16_384;

/** How the tables of a workbook are understood; where they can't be, the rows that come closest, for the user to correct. */
export function understand(workbook: Workbook, map: ColumnMap): Understood {
  try {
    const { channels, settings } = findTables(workbook, map);
    const known = (table: typeof channels): TableUnderstood =>
      tableOf({ ...table, row: table.headerRow, missing: [] }, table.columns, []);
    return { channels: known(channels), settings: known(settings), refusal: null };
  } catch (error) {
    if (!(error instanceof AuditRefused)) throw error;
    return { ...nearest(workbook, map), refusal: error.message };
  }
}

/** The rows that come closest to each table; columns of the other table count where the two are not one row. */
function nearest(workbook: Workbook, map: ColumnMap): Pick<Understood, 'channels' | 'settings'> {
  const [channels, settings] = [closest('channels', workbook, map), closest('settings', workbook, map)];
  const apart = channels?.sheet !== settings?.sheet || channels?.row !== settings?.row;
  const known = (own: HeaderMatch | null): TableUnderstood | null => {
    const match = own && apart ? withColumnsOfOther(own) : own;
    return (
      match &&
      tableOf(
        match,
        match.columns,
        match.clashes.map((clash) => clash.name),
      )
    );
  };
  return { channels: known(channels), settings: known(settings) };
}

function tableOf(
  {
    kind,
    sheet,
    row,
    missing,
    unitColumns,
  }: Pick<HeaderMatch, 'kind' | 'sheet' | 'row' | 'missing' | 'unitColumns'>,
  columns: ReadonlyMap<string, FoundColumn>,
  clashes: readonly string[],
): TableUnderstood {
  const meant = new Map([...columns.values()].map((column) => [column.column, column]));
  const headers = headersIn(sheet, row, 1, lastColumn);
  const blank = [...meant.values()].filter((column) => !headers.some((h) => h.column === column.column));
  const listed = [...headers, ...blank.map(({ column }) => ({ column, text: '' }))];
  return {
    kind,
    sheet: sheet.name,
    headerRow: row,
    missing,
    clashes,
    columns: listed.map(({ column, text }) => {
      const found = meant.get(column);
      const spec = found && specOf(kind, found.id);
      const clashing = spec !== undefined && clashes.includes(spec.name);
      const beside = spec?.dimensions && unitColumns.length > 0 ? 'by unit column' : null;
      return {
        letters: columnLetters(column),
        header: text,
        meaning: spec && !clashing ? spec.name : null,
        unit: found?.unit?.text ?? beside ?? spec?.usualUnit ?? null,
        takesUnit: spec?.dimensions !== undefined,
      };
    }),
  };
}

/** The header row that lacks least of a table, where none fits in full. */
function closest(kind: TableKind, workbook: Workbook, map: ColumnMap): HeaderMatch | null {
  const said = map[kind];
  const sheets = workbook.sheets.filter(
    (sheet) =>
      !isResultSheet(sheet) &&
      (said?.sheet === undefined || sheet.name.toLowerCase() === said.sheet.toLowerCase()),
  );
  const rows = sheets.flatMap((sheet) =>
    (said?.headerRow === undefined ? tagRows(sheet) : [said.headerRow]).map((row) => ({ sheet, row })),
  );
  const matches = rows
    .map(({ sheet, row }) => matchHeaders(kind, sheet, row, headersIn(sheet, row, 1, lastColumn)))
    .filter((match) => match.headers.length > 0)
    .map((match) => withMap(match, map));
  return (
    matches.toSorted((a, b) => a.missing.length - b.missing.length || b.columns.size - a.columns.size)[0] ??
    null
  );
}

function withMap(match: HeaderMatch, map: ColumnMap): HeaderMatch {
  try {
    return applyMap(match, map[match.kind]);
  } catch (error) {
    if (error instanceof AuditRefused) return match;
    throw error;
  }
}

function tagRows(sheet: Sheet): number[] {
  return sheet.rows.flatMap((cells, index) =>
    cells.some((cell) => typeof cell === 'string' && isTagHeader(cell)) ? [index + 1] : [],
  );
}
