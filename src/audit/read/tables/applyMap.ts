import { columnNumber } from '../../../cells/address.ts';
import { parseUnit } from '../../../units/parse.ts';
import { AuditRefused } from '../../model/refused.ts';
import type { TableMap } from '../../model/columnMap.ts';
import { headerKey } from './header.ts';
import type { FoundColumn } from './found.ts';
import type { HeaderCell, HeaderMatch } from './headerRows.ts';
import { columnsOf, type ColumnSpec, type TableKind } from './vocabulary.ts';

/** Id of a column by its standard header, of this kind of table or of the other one, whose columns may stand in it too. */
function idOf(kind: TableKind, name: string): string {
  const other = kind === 'channels' ? 'settings' : 'channels';
  const all = [...Object.entries(columnsOf(kind)), ...Object.entries(columnsOf(other))];
  const found = all.find(([, spec]) => headerKey(spec.name) === headerKey(name));
  if (found) return found[0];
  const known = all.map(([, spec]) => spec.name).filter((one, at, names) => names.indexOf(one) === at);
  throw new AuditRefused(
    `Column map, ${kind}: there is no column '${name}'. The columns are: ${known.join(', ')}.`,
  );
}

/** Id of the quantity whose header this is, in either table. */
function meaningOf(header: string): string | undefined {
  const key = headerKey(header);
  const all = (['channels', 'settings'] as const).flatMap((kind) =>
    Object.entries<ColumnSpec>(columnsOf(kind)),
  );
  return all.find(([, { name, also = [] }]) => [name, ...also].some((text) => headerKey(text) === key))?.[0];
}

function headerFor(match: HeaderMatch, wanted: string): HeaderCell | undefined {
  const byText = match.headers.filter((header) => headerKey(header.text) === headerKey(wanted));
  if (byText.length === 1) return byText[0];
  const column = columnNumber(wanted);
  if (Number.isNaN(column)) return undefined;
  return match.headers.find((h) => h.column === column);
}

/**
 * The match with the user's corrections put in.
 * @throws AuditRefused where the map names a column, header or unit that does not exist.
 */
export function applyMap(match: HeaderMatch, map: TableMap | undefined): HeaderMatch {
  if (!map) return match;
  const columns = new Map(match.columns);
  const said = new Set<string>();
  const leftOut = new Set<string>();
  for (const [name, wanted] of Object.entries(map.columns ?? {})) {
    const id = idOf(match.kind, name);
    said.add(id);
    columns.delete(id);
    if (wanted === null) {
      leftOut.add(id);
      continue;
    }
    const header = headerFor(match, wanted);
    if (!header) {
      throw new AuditRefused(
        `Column map, ${match.kind}, ${name}: '${wanted}' is neither one header of sheet '${match.sheet.name}' row ${match.row} nor a column's letters.`,
      );
    }
    for (const [other, column] of columns) if (column.column === header.column) columns.delete(other);
    columns.set(id, {
      id,
      column: header.column,
      header: header.text,
      remarks: header.remarks,
      ...(header.coverage === undefined ? {} : { coverage: header.coverage }),
      ...(header.unit ? { unit: header.unit } : {}),
    });
  }
  for (const [name, text] of Object.entries(map.units ?? {})) setUnit(match.kind, columns, name, text);
  return {
    ...match,
    columns,
    unread: match.unread.filter(
      ({ column, name }) =>
        ![...columns.values()].some((one) => one.column === column) && !leftOut.has(meaningOf(name) ?? ''),
    ),
    clashes: match.clashes.filter((clash) => !said.has(idOf(match.kind, clash.name))),
    missing: Object.entries(columnsOf(match.kind))
      .filter(([id, spec]) => spec.required && !columns.has(id))
      .map(([, spec]) => spec.name),
  };
}

function setUnit(kind: TableKind, columns: Map<string, FoundColumn>, name: string, text: string): void {
  const id = idOf(kind, name);
  const column = columns.get(id);
  const unit = parseUnit(text);
  if (!unit) throw new AuditRefused(`Column map, ${kind}, unit of ${name}: '${text}' is no unit known here.`);
  if (!column)
    throw new AuditRefused(
      `Column map, ${kind}: a unit is given for '${name}', but no such column is there.`,
    );
  columns.set(id, { ...column, unit });
}
