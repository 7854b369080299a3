import { columnNumber } from '../../cells/address.ts';
import { isBlank } from '../../cells/cell.ts';
import { cellAt, type Workbook } from '../../cells/sheet.ts';
import type { ColumnMap, MappedField, MappedTable } from '../model/columnMap.ts';
import { meaningNamed, answersIn } from './understand/answers/fromMap.ts';
import { fieldName, mappedTableOfLane } from './understand/answers/places.ts';
import type { TableAnswers } from './understand/answers/answers.ts';
import type { TableRead } from './understand/tables/tableRead.ts';
import { statedUnit } from './understand/vocabulary/statedUnit.ts';

/** A list as a map names it. */
type ListSaid = Pick<MappedTable, 'sheet' | 'header' | 'lies'>;

/** An entry of a map that the workbook does not bear out. */
export type Misplaced =
  | { readonly is: 'sheet'; readonly sheet: string; readonly sheets: readonly string[] }
  | { readonly is: 'list'; readonly list: ListSaid; readonly lists: readonly MappedTable[] }
  | { readonly is: 'meaning'; readonly list: ListSaid; readonly name: string }
  | {
      readonly is: 'field';
      readonly list: ListSaid;
      /** The standard header that was to stand there; `null` where it was said to be no quantity of the audit. */
      readonly name: string | null;
      readonly at: string;
      /** The header that was said to stand there. */
      readonly header: string | null;
      /** The one that does; `null` where there is no such field. */
      readonly there: string | null;
    }
  | { readonly is: 'unit'; readonly list: ListSaid; readonly name: string; readonly unit: string }
  | { readonly is: 'cell'; readonly address: string };

/** What a map says of lists, fields and cells that are not there; `tables` are those of the workbook. */
export function misplacedIn(
  map: ColumnMap,
  tables: readonly TableRead[],
  workbook: Workbook,
): readonly Misplaced[] {
  const sheets = workbook.sheets.map(({ name }) => name);
  const missing = (map.tables ?? [])
    .filter(({ sheet }) => !sheets.some((name) => isSameSheet(name, sheet)))
    .map(({ sheet }): Misplaced => ({ is: 'sheet', sheet, sheets }));
  const there = (map.tables ?? []).filter(({ sheet }) => sheets.some((name) => isSameSheet(name, sheet)));
  return [
    ...missing,
    ...there.flatMap((said) => inTable(said, tables)),
    ...Object.keys(map.cells ?? {})
      .filter((address) => !holdsSomething(address, workbook))
      .map((address): Misplaced => ({ is: 'cell', address })),
  ];
}

function isSameSheet(one: string, other: string): boolean {
  return one.toLowerCase() === other.toLowerCase();
}

function inTable(said: MappedTable, tables: readonly TableRead[]): Misplaced[] {
  const look = answersIn({ tables: [said] });
  const meant = tables.flatMap((table) => {
    const read = look.of(table.lane);
    return read ? [{ table, read }] : [];
  });
  if (meant.length === 0) {
    const lists = tables
      .map(({ lane }) => mappedTableOfLane(lane))
      .filter(({ sheet }) => isSameSheet(sheet, said.sheet));
    return [{ is: 'list', list: said, lists }];
  }
  return [
    ...Object.entries(said.columns ?? {}).flatMap(([name, field]) =>
      field === null ? [] : inField(said, name, field, meant),
    ),
    ...Object.entries(said.units ?? {}).flatMap(([name, unit]) => ofUnit(said, name, unit)),
    ...(said.notOfAudit ?? [])
      .filter((at) => !isResolved(said, at, tables))
      .map((at) => absent(said, null, at, meant)),
  ];
}

interface Meant {
  readonly table: TableRead;
  readonly read: TableAnswers;
}

function inField(
  list: ListSaid,
  name: string,
  field: string | MappedField,
  meant: readonly Meant[],
): Misplaced[] {
  const id = meaningNamed(name);
  if (id === undefined) return [{ is: 'meaning', list, name }];
  const unit = typeof field === 'string' || field.unit === undefined ? [] : ofUnit(list, name, field.unit);
  if (meant.some(({ read }) => read.columns.get(id))) return unit;
  return [absent(list, name, field, meant), ...unit];
}

function ofUnit(list: ListSaid, name: string, unit: string): Misplaced[] {
  if (meaningNamed(name) === undefined) return [{ is: 'meaning', list, name }];
  return statedUnit(unit) ? [] : [{ is: 'unit', list, name, unit }];
}

function isResolved(said: MappedTable, at: string, tables: readonly TableRead[]): boolean {
  const look = answersIn({ tables: [{ ...said, notOfAudit: [at] }] });
  return tables.some(({ lane }) => (look.of(lane)?.notQuantities.size ?? 0) > 0);
}

function absent(
  list: ListSaid,
  name: string | null,
  field: string | MappedField,
  meant: readonly Meant[],
): Misplaced {
  const { at, header = null } = typeof field === 'string' ? { at: field } : field;
  const fields = meant.flatMap(({ table }) => table.lane.fields);
  const there = fields.find((one) => fieldName(one).toLowerCase() === at.toLowerCase())?.text ?? null;
  return { is: 'field', list, name, at, header, there };
}

function holdsSomething(address: string, { sheets }: Workbook): boolean {
  const mark = address.lastIndexOf('!');
  const sheet = sheets.find(({ name }) => name === address.slice(0, Math.max(0, mark)));
  const cell = /^\$?(?<column>[A-Za-z]{1,3})\$?(?<row>\d{1,7})$/u.exec(address.slice(mark + 1))?.groups;
  if (!sheet || !cell) return false;
  return !isBlank(cellAt(sheet, Number(cell['row']), columnNumber(cell['column'] ?? '')));
}
