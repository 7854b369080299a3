import * as z from 'zod';
import { columnNumber } from '../../../cells/address.ts';
import { parseUnit } from '../../../units/parse.ts';
import { AuditRefused } from '../../model/refused.ts';
import { headerKey } from './header.ts';
import type { FoundColumn } from './found.ts';
import type { HeaderCell, HeaderMatch } from './headerRows.ts';
import { columnsOf, type TableKind } from './vocabulary.ts';

const tableMap = z.strictObject({
  /** Sheet on which the table stands. */
  sheet: z.string().optional(),
  /** Row of its headers, as the spreadsheet counts. */
  headerRow: z.int().min(1).max(1_048_576).optional(),
  /** Standard header → column letters or the header as it stands; `null` leaves the column out. */
  columns: z.record(z.string(), z.string().nullable()).optional(),
  /** Standard header → unit of the whole column. */
  units: z.record(z.string(), z.string()).optional(),
});

/** What the user said about the tables: overrides what the headers would mean by themselves. */
export const columnMapSchema = z.strictObject({
  channels: tableMap.optional(),
  settings: tableMap.optional(),
});
export type ColumnMap = z.infer<typeof columnMapSchema>;
export type TableMap = z.infer<typeof tableMap>;

/**
 * A column map from parsed JSON.
 * @throws AuditRefused naming the entry that is wrong.
 */
export function parseColumnMap(json: unknown): ColumnMap {
  const parsed = columnMapSchema.safeParse(json);
  if (parsed.success) return parsed.data;
  const [issue] = parsed.error.issues;
  throw new AuditRefused(
    `Column map, at ${issue?.path.join('.') || 'its top level'}: ${issue?.message ?? 'not understood'}.`,
  );
}

function idOf(kind: TableKind, name: string): string {
  const found = Object.entries(columnsOf(kind)).find(([, spec]) => headerKey(spec.name) === headerKey(name));
  if (found) return found[0];
  const known = Object.values(columnsOf(kind)).map((spec) => spec.name);
  throw new AuditRefused(
    `Column map, ${kind}: there is no column '${name}'. The columns are: ${known.join(', ')}.`,
  );
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
  for (const [name, wanted] of Object.entries(map.columns ?? {})) {
    const id = idOf(match.kind, name);
    said.add(id);
    columns.delete(id);
    if (wanted === null) continue;
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
