import type { ColumnMap, TableMap } from '../../../audit/model/columnMap.ts';
import { headerKey } from '../../../audit/read/tables/header.ts';
import type { TableKind } from '../../../audit/read/tables/vocabulary.ts';
import type { ColumnUnderstood, TableUnderstood } from './understood.ts';

/** The map after the user said what a column means; `null`: nothing, it is left alone. */
export function withMeaning(
  map: ColumnMap,
  table: TableUnderstood,
  column: ColumnUnderstood,
  meaning: string | null,
): ColumnMap {
  const said = map[table.kind] ?? {};
  const columns = { ...said.columns };
  const units = { ...said.units };
  if (column.meaning !== null) {
    columns[column.meaning] = null;
    Reflect.deleteProperty(units, column.meaning);
  }
  if (meaning !== null) {
    columns[meaning] = nameOf(table, column);
    Reflect.deleteProperty(units, meaning);
  }
  return withTable(map, table.kind, { ...said, columns, units });
}

/** The map after the user said the unit of a column; an empty text takes back what was said. */
export function withUnit(map: ColumnMap, kind: TableKind, meaning: string, unit: string): ColumnMap {
  const said = map[kind] ?? {};
  const units = { ...said.units };
  if (unit.trim() === '') Reflect.deleteProperty(units, meaning);
  else units[meaning] = unit.trim();
  return withTable(map, kind, { ...said, units });
}

/** The map after the user said on which sheet and row a table's headers stand; `null`: found by themselves. */
export function withPlace(
  map: ColumnMap,
  kind: TableKind,
  sheet: string | null,
  headerRow: number | null,
): ColumnMap {
  const said: TableMap = { ...map[kind] };
  if (sheet === null) Reflect.deleteProperty(said, 'sheet');
  else said.sheet = sheet;
  if (headerRow === null) Reflect.deleteProperty(said, 'headerRow');
  else said.headerRow = headerRow;
  return withTable(map, kind, said);
}

/** Whether the user has said anything about the columns. */
export function saysSomething(map: ColumnMap): boolean {
  return (['channels', 'settings'] as const).some((kind) => map[kind] !== undefined);
}

/** The map without anything that was said about the columns of the tables; what was settled otherwise stays. */
export function withoutCorrections(map: ColumnMap): ColumnMap {
  const next: ColumnMap = { ...map };
  Reflect.deleteProperty(next, 'channels');
  Reflect.deleteProperty(next, 'settings');
  return next;
}

function withTable(map: ColumnMap, kind: TableKind, said: TableMap): ColumnMap {
  const parts = Object.entries(said).filter(
    ([, value]) => typeof value !== 'object' || Object.keys(value).length > 0,
  );
  const next: ColumnMap = { ...map };
  if (parts.length === 0) Reflect.deleteProperty(next, kind);
  else next[kind] = Object.fromEntries(parts);
  return next;
}

/** Its header where no other column has the same, which holds when columns are moved; else its letters. */
function nameOf({ columns }: TableUnderstood, { header, letters }: ColumnUnderstood): string {
  const key = headerKey(header);
  const alike = columns.filter((column) => headerKey(column.header) === key);
  return key !== '' && alike.length === 1 ? header : letters;
}
