import { quotedName } from './reference.ts';

/** A formula template ready to be written down the rows. */
export interface RowFormula {
  /** The formula in a row, without the leading `=`. */
  at(row: number): string;
  /**
   * Whether rows differ in nothing but relative row numbers, so that a column of it can be stored once and shared.
   * Formulas that lead to other sheets are never shared: spreadsheet programs share none themselves.
   */
  readonly shareable: boolean;
}

/** Stands for the row number while a formula is looked at; no character of any text. */
const row = '\uFDD0';

/**
 * Takes a template apart: `{r}` stands for the row, `{Sheet name}!` for a sheet of this run by the name it asked
 * for, which `given` leads to the name it got. Throws an Error for a sheet that is not of this run.
 */
export function rowFormula(template: string, given: ReadonlyMap<string, string>): RowFormula {
  const named = template.replace(/\{([^{}]+)\}!/g, (_, wanted: string) => {
    const name = given.get(wanted);
    if (name === undefined)
      throw new Error(`formula "${template}" names the sheet "${wanted}", which is not written`);
    return `${quotedName(name)}!`;
  });
  const pieces = named.split('{r}');
  return { at: (number) => pieces.join(String(number)), shareable: isShareable(pieces.join(row)) };
}

/** Sharing shifts every reference without `$`: so each must shift by `{r}`, and `{r}` must stand nowhere else. */
function isShareable(formula: string): boolean {
  const bare = formula.replace(/"(?:[^"]|"")*"/g, '""');
  if (!bare.includes(row) || bare.includes('!') || bare.includes('[')) return false;
  const rest = bare.replace(/(?<![\w.$\\])\$?[A-Za-z]{1,3}\uFDD0(?![\w.(])/g, '');
  if (rest.includes(row)) return false;
  const fixedToRow = /(?<![\w.$\\])\$?[A-Za-z]{1,3}\d+(?![\w.(])/;
  const wholeRows = /\d\s*:/;
  return (
    !fixedToRow.test(rest) && !wholeRows.test(rest.replace(/\$[A-Za-z]{1,3}\$\d+|[A-Za-z]{1,3}\$\d+/g, ''))
  );
}
