import type { Sheet, SheetTable } from '../../../cells/sheet.ts';
import { columnLetters } from '../../../cells/address.ts';
import { headerKey, keysOf, parseHeader, unitWord, type Header } from './header.ts';
import type { ColumnSpec } from './columnSpec.ts';
import type { FoundColumn, UnitColumn, UnreadHeader } from './found.ts';
import { columnsOf, type TableKind } from './vocabulary.ts';

export interface HeaderCell extends Header {
  readonly column: number;
}

/** Several headers that could all be the same column. */
interface Clash {
  readonly name: string;
  readonly headers: readonly HeaderCell[];
}

/** One stretch of one row read as the header of one kind of table. */
export interface HeaderMatch {
  readonly kind: TableKind;
  readonly sheet: Sheet;
  readonly row: number;
  readonly left: number;
  readonly right: number;
  readonly table?: SheetTable;
  readonly columns: ReadonlyMap<string, FoundColumn>;
  readonly unitColumns: readonly UnitColumn[];
  readonly clashes: readonly Clash[];
  readonly missing: readonly string[];
  readonly headers: readonly HeaderCell[];
  readonly unread: readonly UnreadHeader[];
}

interface Vocabulary {
  readonly standard: ReadonlyMap<string, string>;
  readonly also: ReadonlyMap<string, string>;
}

const vocabularies: Readonly<Record<TableKind, Vocabulary>> = {
  channels: vocabularyOf('channels'),
  settings: vocabularyOf('settings'),
};

function vocabularyOf(kind: TableKind): Vocabulary {
  const standard = new Map<string, string>();
  const also = new Map<string, string>();
  for (const [id, spec] of Object.entries(columnsOf(kind))) {
    const keys = keysOf(spec);
    standard.set(keys.standard, id);
    for (const key of keys.also) also.set(key, id);
  }
  return { standard, also };
}

function isName(key: string): boolean {
  return Object.values(vocabularies).some((words) => words.standard.has(key) || words.also.has(key));
}

const tagKeys = new Set(
  [...vocabularies.channels.standard, ...vocabularies.channels.also]
    .filter(([, id]) => id === 'tag')
    .map(([key]) => key),
);
/** Accents, or letters with marks between them, that a plain look would miss: `Tág`, `T.A.G.`. */
const spelledOut = /[^ -~]|\p{L}[^\p{L}\p{N} ]\p{L}/u;
const mayBeTag = /tag|channel|point|instrument/iu;

/** Whether a header text can head the tag column. */
export function isTagHeader(text: string): boolean {
  if (text.length > 60 || !(mayBeTag.test(text) || (spelledOut.test(text) && mayBeTag.test(headerKey(text)))))
    return false;
  return tagKeys.has(parseHeader(text, isName).key);
}

/** The headers in a row between two columns. */
export function headersIn(sheet: Sheet, row: number, left: number, right: number): HeaderCell[] {
  const cells = sheet.rows[row - 1] ?? [];
  const headers: HeaderCell[] = [];
  for (let column = left; column <= Math.min(right, cells.length); column++) {
    const cell = cells[column - 1];
    if (typeof cell === 'string' && cell.trim() !== '' && cell.length <= 250) {
      headers.push({ column, ...parseHeader(cell, isName) });
    }
  }
  return headers;
}

/** Reads headers as those of one kind of table: which column is which, what clashes, what is missing. */
export function matchHeaders(
  kind: TableKind,
  sheet: Sheet,
  row: number,
  headers: readonly HeaderCell[],
): HeaderMatch {
  const columns = new Map<string, FoundColumn>();
  const clashes: Clash[] = [];
  const used = new Set<number>();
  for (const [id, spec] of Object.entries(columnsOf(kind))) {
    const fitting = fittingHeaders(kind, id, spec, headers);
    const [only, second] = fitting;
    if (second) clashes.push({ name: spec.name, headers: fitting });
    if (!only) continue;
    for (const header of fitting) used.add(header.column);
    columns.set(id, {
      id,
      column: only.column,
      header: only.text,
      remarks: only.remarks,
      ...(only.coverage === undefined ? {} : { coverage: only.coverage }),
      ...(only.unit ? { unit: only.unit } : {}),
    });
  }
  const unitColumns = headers
    .filter((h) => !used.has(h.column) && unitWord.test(h.key))
    .map((h) => asUnitColumn(kind, h));
  const unitAt = new Set(unitColumns.map((unit) => unit.column));
  const own = [...used, ...unitAt];
  const span = own.length > 0 ? own : headers.map((header) => header.column);
  return {
    kind,
    sheet,
    row,
    left: Math.min(...span),
    right: Math.max(...span),
    columns,
    unitColumns,
    clashes,
    missing: Object.entries(columnsOf(kind))
      .filter(([id, spec]) => spec.required && !columns.has(id))
      .map(([, spec]) => spec.name),
    headers,
    unread: unreadHeaders(kind, headers, columns, new Set([...used, ...unitAt])),
  };
}

function unreadHeaders(
  kind: TableKind,
  headers: readonly HeaderCell[],
  columns: ReadonlyMap<string, FoundColumn>,
  read: ReadonlySet<number>,
): UnreadHeader[] {
  const { standard, also } = vocabularies[kind];
  return headers
    .filter(({ column }) => !read.has(column))
    .map(({ column, text, name, key, unit }) => {
      const id = standard.get(key) ?? also.get(key);
      const secondName = id !== undefined && columns.has(id);
      return { column, text, name, secondName, ...(unit ? { unit } : {}) };
    });
}

/**
 * The headers that fit a column. Beside the standard header of a text or a choice another one names something else, as
 * `Channel` beside `Tag`; beside that of a number, a date or a yes/no it leaves open which is meant, unless its unit can't
 * be one of this column, as in `Gap (mil)` beside `Gap voltage (V)`.
 */
function fittingHeaders(
  kind: TableKind,
  id: string,
  spec: ColumnSpec,
  headers: readonly HeaderCell[],
): readonly HeaderCell[] {
  const { standard, also } = vocabularies[kind];
  const exact = headers.filter(({ key }) => standard.get(key) === id);
  if (exact.length > 0 && (spec.holds === 'text' || spec.holds === 'choice')) return exact;
  const others = headers.filter(({ key }) => also.get(key) === id);
  if (exact.length === 0) return others;
  return [...exact, ...others.filter(({ unit }) => !unit || spec.dimensions?.includes(unit.dimension))];
}

function asUnitColumn(kind: TableKind, header: HeaderCell): UnitColumn {
  const stem = header.key.replace(unitWord, '');
  const names = new Set<string>();
  if (stem !== '') {
    for (const [id, spec] of Object.entries(columnsOf(kind))) {
      const keys = keysOf(spec);
      if (keys.standard === stem || keys.also.has(stem)) names.add(id);
    }
  }
  return { column: header.column, header: header.text, names };
}

/**
 * A header row with the columns that belong to the other table: full scale in a channel list, a limit among the settings.
 * Only headers that mean nothing in their own table count.
 */
export function withColumnsOfOther(match: HeaderMatch): HeaderMatch {
  const other = match.kind === 'channels' ? 'settings' : 'channels';
  const free = new Set(match.unread.filter(({ secondName }) => !secondName).map(({ column }) => column));
  const foreign = matchHeaders(
    other,
    match.sheet,
    match.row,
    match.headers.filter(({ column }) => free.has(column)),
  );
  const columns = new Map(match.columns);
  const taken = new Set<number>();
  for (const [id, column] of foreign.columns) {
    if (columns.has(id)) continue;
    columns.set(id, column);
    taken.add(column.column);
  }
  if (taken.size === 0 && foreign.clashes.length === 0) return match;
  const edges = [...taken];
  return {
    ...match,
    columns,
    left: Math.min(match.left, ...edges),
    right: Math.max(match.right, ...edges),
    clashes: [...match.clashes, ...foreign.clashes],
    unread: match.unread.filter(({ column }) => !taken.has(column)),
  };
}

/** Headers as they are quoted in a message: `A 'Tag', B 'Alert (mil)'`. */
export function quoteHeaders(headers: readonly { column: number; text: string }[]): string {
  const quoted = headers.slice(0, 30).map((header) => `${columnLetters(header.column)} '${header.text}'`);
  return quoted.join(', ') + (headers.length > 30 ? `, and ${headers.length - 30} more` : '');
}
