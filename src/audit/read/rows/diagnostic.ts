import type { Fact, FactOf, Place, PlacedFact, RowPlace } from '../../model/findings.ts';
import { columnLetters } from '../../../cells/address.ts';
import { factAt } from '../../model/findings.ts';
import type { CellRules } from '../../model/rules/cellRules.ts';
import type { FoundTable } from '../tables/found.ts';

/**
 * What is wrong with one value of one row, before it is known where the finding will stand: in a column by its id in the
 * vocabulary. `place` where the value stands, told where both tables hold the column.
 */
export type Diagnostic = Fact & { readonly column: string; readonly place?: Place };

/** What is wrong with one cell as it was read. */
export type CellDiagnostic = {
  readonly [R in keyof CellRules]: FactOf<R> & { readonly column: string };
}[keyof CellRules];

/** Where a column of a table stands in a row; the tag column where the table has no such column. */
export function placeOf(
  table: Pick<FoundTable, 'sheet' | 'columns' | 'origin'>,
  row: number,
  id: string,
): Place {
  if (table.origin) return table.origin.place(row, id);
  const column = table.columns.get(id) ?? table.columns.get('tag');
  return { sheet: table.sheet.name, row, column: column ? columnLetters(column.column) : '' };
}

/** The row of the workbook in which a row of a table stands. */
export function rowPlaceOf(table: Pick<FoundTable, 'sheet' | 'columns' | 'origin'>, row: number): RowPlace {
  const { sheet, row: at } = placeOf(table, row, 'tag');
  return { sheet, row: at };
}

/** What is wrong with a value, at its place. */
export function placed(
  table: Pick<FoundTable, 'sheet' | 'columns' | 'origin'>,
  row: number,
  one: Diagnostic,
): PlacedFact {
  return factAt(placeOf(table, row, one.column), one);
}

/** What is wrong with the cells of a row, with what was said of them where they really stand. */
export function withRemarks(
  { origin }: Pick<FoundTable, 'origin'>,
  row: number,
  diagnostics: readonly Diagnostic[],
): readonly Diagnostic[] {
  return origin ? [...origin.remarks(row), ...diagnostics] : diagnostics;
}
