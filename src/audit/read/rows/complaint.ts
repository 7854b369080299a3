import type { Fact, Finding, PlacedFact, Severity } from '../../model/findings.ts';
import { columnLetters } from '../../../cells/address.ts';
import type { FoundTable } from '../tables/found.ts';

/** What is wrong with one value of one row, before it is known where the finding will stand. */
export interface Complaint {
  readonly rule: string;
  readonly severity: Severity;
  readonly message: string;
  /** Id of the column in the vocabulary. */
  readonly column: string;
}

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

type Placing = Pick<FoundTable, 'sheet' | 'columns'>;
type Diagnostic = Fact & { readonly column: string };

/** What is wrong with a value, at its place. */
export function placed(table: Placing, row: number, one: Diagnostic): PlacedFact;
export function placed(table: Placing, row: number, one: Complaint): Finding;
export function placed(table: Placing, row: number, one: Diagnostic | Complaint): PlacedFact | Finding;
export function placed(table: Placing, row: number, one: Diagnostic | Complaint): PlacedFact | Finding {
  const place = placeOf(table, row, one.column);
  if (!('message' in one)) return { ...one, ...place };
  const { rule, severity, message } = one;
  return { rule, severity, message, ...place };
}
