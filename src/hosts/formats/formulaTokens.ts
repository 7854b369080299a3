import { behindBrackets } from '../../cells/formulaText.ts';

/**
 * A piece of a formula: a text in quotes, a sheet name in apostrophes, what stands in square brackets (columns of a
 * table, or the number of another workbook), a number, a word (name, function or address, with its `$`), or one other character.
 */
export interface FormulaToken {
  readonly kind: 'text' | 'sheet' | 'bracket' | 'number' | 'word' | 'other';
  readonly text: string;
}

const pieces: readonly (readonly [FormulaToken['kind'], RegExp])[] = [
  ['text', /"(?:[^"]|"")*"?/y],
  ['sheet', /'(?:[^']|'')*'?/y],
  ['number', /(?:\d+(?:\.\d*)?|\.\d+)(?:[eE][+-]?\d+)?/y],
  ['word', /[\p{L}_\\$][\p{L}\p{N}_.\\?$]*/uy],
];

/** A formula's pieces; joined they are the formula again, whatever it holds. */
export function formulaTokens(formula: string): FormulaToken[] {
  const tokens: FormulaToken[] = [];
  for (let at = 0; at < formula.length;) {
    const token = tokenAt(formula, at);
    tokens.push(token);
    at += token.text.length;
  }
  return tokens;
}

export function formulaOf(tokens: readonly FormulaToken[]): string {
  return tokens.map(({ text }) => text).join('');
}

/** The tokens behind `index` that is no white space: its index, or the number of tokens where there is none. */
export function nextToken(tokens: readonly FormulaToken[], index: number): number {
  let next = index + 1;
  while (next < tokens.length && /^\s$/.test(tokens[next]?.text ?? '')) next++;
  return next;
}

function tokenAt(formula: string, at: number): FormulaToken {
  if (formula[at] === '[') return { kind: 'bracket', text: formula.slice(at, behindBrackets(formula, at)) };
  for (const [kind, pattern] of pieces) {
    pattern.lastIndex = at;
    const [text] = pattern.exec(formula) ?? [];
    if (text !== undefined) return { kind, text };
  }
  return { kind: 'other', text: formula.slice(at, at + 1) };
}

/** Whether two formulas, both as people type them, differ in nothing but white space and the case of names. */
export function isSameFormula(one: string, other: string): boolean {
  return one === other || bare(one) === bare(other);
}

function bare(formula: string): string {
  return formulaTokens(formula)
    .map(({ kind, text }) => (kind === 'text' ? text : text.trim().toUpperCase()))
    .join('');
}
