import { isBlank } from '../../../cells/cell.ts';
import { type Sheet, cellAt } from '../../../cells/sheet.ts';
import { headerStretches, type HeaderStretch } from '../tables/candidates.ts';
import { type FoundColumn, type ReadTable, type UnitColumn, type Tables } from '../tables/found.ts';
import type { HeaderRows } from '../tables/searchHeaders.ts';
import { keysOf, parseHeader, unitWord, type Header } from '../tables/header.ts';
import { unitOfText } from '../tables/unitRow.ts';
import { historyColumns, type HistoryColumnId } from './historyColumns.ts';

/** A table of dated readings, found on a sheet. Rows count from 1. */
export interface HistoryTable extends ReadTable {
  readonly headerRow: number;
  readonly firstRow: number;
  readonly lastRow: number;
}

const ids = new Map<string, HistoryColumnId>();
for (const [id, spec] of Object.entries(historyColumns)) {
  const { standard, also } = keysOf(spec);
  for (const key of [standard, ...also]) ids.set(key, id as HistoryColumnId);
}

/** Every history of a workbook: what has columns for tag, date and sensitivity and is neither of the two tables. */
export function historyTables(headerRows: HeaderRows, tables: Tables): HistoryTable[] {
  const stretches = headerStretches(headerRows);
  const own = [tables.channels, tables.settings];
  return stretches.flatMap((stretch) => {
    const isOwn = own.some(
      ({ sheet, headerRow, skipped, columns }) =>
        sheet === stretch.sheet &&
        (headerRow === stretch.row || skipped.has(stretch.row)) &&
        isWithin(columns.get('tag')?.column ?? 0, stretch),
    );
    const table = isOwn ? undefined : tableOf(stretch, stretches);
    return table ? [table] : [];
  });
}

function isWithin(column: number, { left, right }: HeaderStretch): boolean {
  return column >= left && column <= right;
}

function tableOf(stretch: HeaderStretch, all: readonly HeaderStretch[]): HistoryTable | undefined {
  const { sheet, row, left, right } = stretch;
  const found = new Map<string, FoundColumn>();
  const unitColumns: UnitColumn[] = [];
  const cells = sheet.rows[row - 1] ?? [];
  for (let column = left; column <= Math.min(right, cells.length); column++) {
    const cell = cells[column - 1];
    if (typeof cell !== 'string' || cell.length > 250) continue;
    const header = parseHeader(cell, (key) => ids.has(key));
    const id = ids.get(header.key);
    if (id && !found.has(id)) found.set(id, columnOf(id, column, header));
    else if (!id && unitWord.test(header.key)) unitColumns.push(unitColumn(column, header));
  }
  if (!(['tag', 'day', 'sensitivity'] as const).every((id) => found.has(id))) return undefined;
  const lastRow = endOf(stretch, all);
  const { columns, firstRow } = withUnitRow(sheet, row, found);
  return { sheet, headerRow: row, firstRow, lastRow, columns, unitColumns };
}

function columnOf(id: string, column: number, { text, unit, coverage, remarks }: Header): FoundColumn {
  return {
    id,
    column,
    header: text,
    remarks,
    ...(unit ? { unit } : {}),
    ...(coverage === undefined ? {} : { coverage }),
  };
}

function unitColumn(column: number, { key, text }: Header): UnitColumn {
  const id = ids.get(key.replace(unitWord, ''));
  return { column, header: text, names: new Set(id ? [id] : []) };
}

/** Down to the next header below it, or the end of the spreadsheet table without its totals. */
function endOf({ sheet, row, left, right, table }: HeaderStretch, all: readonly HeaderStretch[]): number {
  const below = all
    .filter((other) => other.sheet === sheet && other.row > row && other.left <= right && other.right >= left)
    .map((other) => other.row - 1);
  const end = Math.min(sheet.rows.length, ...below);
  return table?.totalsRow ? Math.min(end, table.area.bottom - 1) : end;
}

/** The columns with units of a row right below the header that has no tag and no date. */
function withUnitRow(
  sheet: Sheet,
  row: number,
  found: ReadonlyMap<string, FoundColumn>,
): { readonly columns: ReadonlyMap<string, FoundColumn>; readonly firstRow: number } {
  const at = (id: string) => cellAt(sheet, row + 1, found.get(id)?.column ?? 0);
  const cell = at('sensitivity');
  const unit = typeof cell === 'string' && isBlank(at('tag')) ? unitOfText(cell.trim()) : undefined;
  if (!unit) return { columns: found, firstRow: row + 1 };
  const columns = new Map(found);
  for (const id of ['sensitivity', 'asLeft']) {
    const column = found.get(id);
    if (column) columns.set(id, { ...column, unit: column.unit ?? unit });
  }
  return { columns, firstRow: row + 2 };
}
