import type { FormulaToken } from './formulaTokens.ts';

const anchorArray: FormulaToken = { kind: 'word', text: 'ANCHORARRAY' };

/**
 * `A1#`, all that the formula in A1 fills, as the call `ANCHORARRAY(A1)` that files have in its place, and without `@`
 * before a reference or call: a formula that is not an array formula means it anyway (common practice, no source).
 */
export function withoutSpillSigns(tokens: readonly FormulaToken[]): FormulaToken[] {
  const result: FormulaToken[] = [];
  for (const token of tokens) {
    if (token.text === '@' && result.at(-1)?.kind !== 'word') continue;
    if (token.text !== '#' || result.at(-1)?.kind !== 'word') {
      result.push(token);
      continue;
    }
    const start = referenceStart(result);
    const reference = result.splice(start);
    result.push(anchorArray, other('('), ...reference, other(')'));
  }
  return result;
}

/** `ANCHORARRAY(A1)` as a person types it, `A1#`; tokens come without the marks of files. */
export function withSpillSigns(tokens: readonly FormulaToken[]): FormulaToken[] {
  const result: FormulaToken[] = [];
  for (let at = 0; at < tokens.length; at++) {
    const token = tokens[at];
    if (token === undefined) break;
    const end = token.text.toUpperCase() === 'ANCHORARRAY' ? closing(tokens, at + 1) : undefined;
    if (end === undefined) result.push(token);
    else {
      result.push(...tokens.slice(at + 2, end), other('#'));
      at = end;
    }
  }
  return result;
}

/** Where a reference that ends with the last token begins: with its sheet, and that sheet's workbook. */
function referenceStart(tokens: readonly FormulaToken[]): number {
  const cell = tokens.length - 1;
  if (tokens[cell - 1]?.text !== '!') return cell;
  const sheet = cell - 2;
  return tokens[sheet - 1]?.kind === 'bracket' ? sheet - 1 : sheet;
}

/** The closing bracket of a call whose only argument is a reference; undefined for anything else. */
function closing(tokens: readonly FormulaToken[], opening: number): number | undefined {
  if (tokens[opening]?.text !== '(') return undefined;
  let end = opening + 1;
  while (tokens[end] && (tokens[end]?.kind !== 'other' || tokens[end]?.text === '!')) end++;
  return tokens[end]?.text === ')' && tokens[end - 1]?.kind === 'word' ? end : undefined;
}

function other(text: string): FormulaToken {
  return { kind: 'other', text };
}
