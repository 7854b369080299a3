import { formulaTokens } from './formulaTokens.ts';

/** Whether two formulas, both as people type them, differ in nothing but white space and the case of names. */
export function isSameFormula(one: string, other: string): boolean {
  return one === other || bare(one) === bare(other);
}

function bare(formula: string): string {
  return formulaTokens(formula)
    .map(({ kind, text }) => (kind === 'text' ? text : text.trim().toUpperCase()))
    .join('');
}
