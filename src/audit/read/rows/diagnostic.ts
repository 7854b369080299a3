import type { Fact, FactOf, PlacedFact } from '../../model/findings.ts';
import { columnLetters } from '../../../cells/address.ts';
import { factAt } from '../../model/findings.ts';
import type { CellRules } from '../../model/rules/cellRules.ts';
import type { FoundTable } from '../tables/found.ts';

/** What is wrong with one value of one row, before it is known where the finding will stand: in a column by its id in the vocabulary. */
export type Diagnostic = Fact & { readonly column: string };

/** What is wrong with one cell as it was read. */
export type CellDiagnostic = {
  readonly [R in keyof CellRules]: FactOf<R> & { readonly column: string };
}[keyof CellRules];

/** Where a column of a table stands in a row; the tag column where the table has no such column. */
export function placeOf(
  table: Pick<FoundTable, 'sheet' | 'columns'>,
  row: number,
  id: string,
): { sheet: string; row: number; column: string } {
  const column = table.columns.get(id) ?? table.columns.get('tag');
  return { sheet: table.sheet.name, row, column: column ? columnLetters(column.column) : '' };
}

/** The address of a cell of a table's row, such as `C3`. */
export function cellOf(table: FoundTable, row: number, id: string): string {
  const place = placeOf(table, row, id);
  return `${place.column}${place.row}`;
}

/** What is wrong with a value, at its place. */
export function placed(
  table: Pick<FoundTable, 'sheet' | 'columns'>,
  row: number,
  one: Diagnostic,
): PlacedFact {
  return factAt(placeOf(table, row, one.column), one);
}
