import { columnLetters } from '../../../cells/address.ts';
import type { SheetTable } from '../../../cells/sheet.ts';

/** A part of a table that a formula can name. */
type TablePart = 'all' | 'data' | 'headers' | 'totals' | 'this row';

/** What a formula names of a table: some of its parts, its data where none is said; one column, or the first and last of several. */
interface StructuredReference {
  readonly parts: readonly TablePart[];
  readonly columns: readonly string[];
}

const keywords: ReadonlyMap<string, TablePart> = new Map([
  ['#all', 'all'],
  ['#data', 'data'],
  ['#headers', 'headers'],
  ['#totals', 'totals'],
  ['#this row', 'this row'],
]);

/** A table as formulas name it. */
export interface NamedTable extends SheetTable {
  /** Name of its sheet. */
  readonly sheet: string;
  /** Titles of its columns from the left; none where it has no header row. */
  readonly titles: readonly string[];
}

/**
 * The reference to cells by their place that a name of a table with what stands in brackets behind it (`''` where nothing
 * does) means. Where the table has no such part or column it gives `#REF!` and still depends on the titles, so that it is
 * calculated anew as they change.
 */
export function plainReference(table: NamedTable, brackets: string): string {
  const { area } = table;
  const named = structuredReference(brackets === '' ? '[]' : brackets);
  const columns = named && columnsOf(table, named.columns);
  const rows = named && rowsOf(table, named.parts);
  if (!columns || !rows) {
    // Not on the data: a formula among them would depend on itself.
    const bottom = table.headerRow ? area.top : area.bottom;
    return `(COUNTA(${rangeOf(table, [area.top, bottom], [area.left, area.right])})+#REF!)`;
  }
  const range = rangeOf(table, rows, columns);
  if (!named.parts.includes('this row')) return range;
  // The engine keeps one understanding for all cells with the same text, so the row has to be found as it calculates.
  return `INDEX(${range},ROW()-${rows[0] - 1}${columns[0] === columns[1] ? '' : ',0'})`;
}

type Span = readonly [first: number, last: number];

function rangeOf({ sheet }: NamedTable, [top, bottom]: Span, [left, right]: Span): string {
  const name = sheet.replaceAll("'", "''");
  return `'${name}'!$${columnLetters(left)}$${top}:$${columnLetters(right)}$${bottom}`;
}

function columnsOf({ area, titles }: NamedTable, named: readonly string[]): Span | undefined {
  const known = titles.map((title) => title.toLowerCase());
  const places = named.map((title) => known.indexOf(title.toLowerCase()));
  if (places.includes(-1)) return undefined;
  if (places.length === 0) return [area.left, area.right];
  return [area.left + Math.min(...places), area.left + Math.max(...places)];
}

function rowsOf(table: SheetTable, parts: readonly TablePart[]): Span | undefined {
  const spans = (parts.length === 0 ? (['data'] as const) : parts).map((part) => rowsOfPart(table, part));
  const top = Math.min(...spans.map(([first]) => first));
  const bottom = Math.max(...spans.map(([, last]) => last));
  // A part that the table has not makes both NaN.
  return top <= bottom ? [top, bottom] : undefined;
}

function rowsOfPart({ area, headerRow, totalsRow }: SheetTable, part: TablePart): Span {
  switch (part) {
    case 'all':
      return [area.top, area.bottom];
    case 'headers':
      return headerRow ? [area.top, area.top] : [NaN, NaN];
    case 'totals':
      return totalsRow ? [area.bottom, area.bottom] : [NaN, NaN];
    case 'data':
    case 'this row':
      return [area.top + Number(headerRow), area.bottom - Number(totalsRow)];
  }
}

/**
 * What stands in the brackets behind the name of a table, as in `[Measured]`, `[[#Totals],[Tag]:[Measured]]` or `[@Tag]`;
 * `undefined` where it is no such thing. Source: the grammar of structure references, [MS-OE376] section 3.2.3.1.1, for
 * ECMA-376 part 1, section 18.17.2.3; `@` for `[#This Row]` is how Excel shows it (from memory).
 */
export function structuredReference(brackets: string): StructuredReference | undefined {
  const inner = /^\[(.*)\]$/s.exec(brackets)?.[1]?.trim();
  if (inner === undefined) return undefined;
  if (!inner.startsWith('@')) return namedIn(inner);
  const columns = namedIn(inner.slice(1).trim());
  return columns?.parts.length === 0 ? { ...columns, parts: ['this row'] } : undefined;
}

function namedIn(inner: string): StructuredReference | undefined {
  if (inner === '') return { parts: [], columns: [] };
  // A name by itself needs no brackets of its own.
  const names = inner.startsWith('[') ? namesIn(inner) : [{ name: inner, before: '' }];
  if (!names) return undefined;
  const parts: TablePart[] = [];
  const columns: string[] = [];
  for (const { name, before } of names) {
    const part = keywords.get(name.toLowerCase().replace(/\s+/g, ' '));
    const fits = columns.length === 0 ? before !== ':' && !name.startsWith('#') : before === ':';
    if (part && columns.length === 0 && before !== ':') parts.push(part);
    else if (fits && columns.length < 2) columns.push(name.replace(/'(.)/gs, '$1'));
    else return undefined;
  }
  // The row a formula stands in goes with no other part.
  return parts.includes('this row') && parts.length > 1 ? undefined : { parts, columns };
}

/** Names in brackets of their own, each with the sign before it. */
function namesIn(inner: string): { name: string; before: string }[] | undefined {
  const one = /(?:([,:])\s*)?\[((?:'.|[^'[\]])*)\]\s*/gsy;
  const names = [];
  while (one.lastIndex < inner.length) {
    const [, before = '', name] = one.exec(inner) ?? [];
    if (name === undefined) return undefined;
    if ((before === '') !== (names.length === 0)) return undefined;
    names.push({ name: name.trim(), before });
  }
  return names;
}
