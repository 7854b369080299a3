import { formulaOf, formulaTokens } from '../../../hosts/formats/formulaTokens.ts';
import { type NamedTable, plainReference } from './plainReference.ts';

/** A formula with references by place instead of names of tables; `tables` by their names in small letters. */
export function plainFormula(formula: string, tables: ReadonlyMap<string, NamedTable>): string {
  if (tables.size === 0) return formula;
  const tokens = formulaTokens(formula);
  const plain = [];
  for (let at = 0; at < tokens.length; at++) {
    const token = tokens[at];
    if (!token) continue;
    const table = token.kind === 'word' ? tables.get(token.text.toLowerCase()) : undefined;
    const next = tokens[at + 1];
    // A name of a sheet, a function, or one end of a range of whole columns.
    const other =
      [tokens[at - 1]?.text, next?.text].some((sign) => sign === '!' || sign === ':') || next?.text === '(';
    if (!table || (other && next?.kind !== 'bracket')) {
      plain.push(token);
      continue;
    }
    const brackets = next?.kind === 'bracket' ? next.text : '';
    if (brackets !== '') at++;
    plain.push({ kind: 'other', text: plainReference(table, brackets) } as const);
  }
  return formulaOf(plain);
}
