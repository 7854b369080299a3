import { columnLetters } from '../../cells/address.ts';
import { spelledOut } from './formulas.ts';

/** A column by its name, with the formula that it has in every row; see `spelledOut`. */
interface CalculatedColumn {
  readonly id: string;
  readonly formula: string | undefined;
}

/** Formulas of the columns of a sheet that have one, and the place of each column's own among them. */
export function columnFormulas(columns: readonly CalculatedColumn[]): {
  readonly templates: readonly string[];
  readonly templateOf: ReadonlyMap<string, number>;
} {
  const letters = new Map(columns.map(({ id }, index) => [id, columnLetters(index + 1)]));
  const templates: string[] = [];
  const templateOf = new Map<string, number>();
  for (const { id, formula } of columns) {
    if (formula === undefined) continue;
    templateOf.set(id, templates.length);
    templates.push(spelledOut(formula, letters));
  }
  return { templates, templateOf };
}
