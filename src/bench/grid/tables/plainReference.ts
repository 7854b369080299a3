import { columnLetters } from '../../../cells/address.ts';
import type { SheetTable } from '../../../cells/sheet.ts';
import { structuredReference, type TablePart } from './structuredReference.ts';

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
