import { nextToken, type FormulaToken } from './formulaTokens.ts';

/**
 * Which tokens are names that `LET` or `LAMBDA` gives inside a formula (`x` in `LET(x,2,x*x)`), by their index. Files
 * mark them with `_xlpm.` (common practice, no source).
 */
export function parameterTokens(tokens: readonly FormulaToken[]): ReadonlySet<number> {
  const found = new Set<number>();
  tokens.forEach((token, index) => {
    if (token.kind !== 'word') return;
    const call = token.text.toUpperCase();
    if (call !== 'LET' && call !== 'LAMBDA') return;
    const opening = nextToken(tokens, index);
    if (tokens[opening]?.text !== '(') return;
    const parts = callArguments(tokens, opening);
    const end = parts.at(-1)?.end ?? opening;
    const names = new Set(
      parts
        .slice(0, -1)
        .filter((_, position) => call === 'LAMBDA' || position % 2 === 0)
        .map((part) => onlyWord(tokens, part)),
    );
    for (let at = opening; at < end; at++) {
      const inside = tokens[at];
      if (inside?.kind === 'word' && names.has(inside.text.toUpperCase())) found.add(at);
    }
  });
  return found;
}

interface Span {
  readonly start: number;
  readonly end: number;
}

function callArguments(tokens: readonly FormulaToken[], opening: number): Span[] {
  const spans: Span[] = [];
  let depth = 0;
  let start = opening + 1;
  for (let at = opening; at < tokens.length; at++) {
    const text = tokens[at]?.kind === 'other' ? tokens[at]?.text : '';
    if (text === '(' || text === '{') depth++;
    else if (text === ',' && depth === 1) {
      spans.push({ start, end: at });
      start = at + 1;
    } else if ((text === ')' || text === '}') && --depth === 0) {
      return [...spans, { start, end: at }];
    }
  }
  return [...spans, { start, end: tokens.length }];
}

function onlyWord(tokens: readonly FormulaToken[], { start, end }: Span): string | undefined {
  const told = tokens.slice(start, end).filter(({ text }) => text.trim() !== '');
  const [first] = told;
  return told.length === 1 && first?.kind === 'word' ? first.text.toUpperCase() : undefined;
}
