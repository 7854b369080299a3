import { formulaOf, formulaTokens, nextToken, type FormulaToken } from './formulaTokens.ts';
import { parameterTokens } from './formulaParameters.ts';
import { storedPrefix } from './futureFunctions.ts';
import { shownOurs, storedOurs } from './ourNames.ts';
import { withoutSpillSigns, withSpillSigns } from './spillReference.ts';

const prefix = /^(?:_xlfn\.|_xlws\.|_xlpm\.|_xlop\.)+/i;

/**
 * A formula of a file as a person types it: `_xldudf_TRIPDRIFT_SHIFT(…)`, with or without a workbook number before it
 * (`[2]!`), becomes `TRIPDRIFT.SHIFT(…)`; marks of newer functions (`_xlfn.`, `_xlws.`, `_xlpm.`) go. Any case. Texts,
 * sheet names and column names stay. Neither form has the leading `=`.
 */
export function shownFormula(stored: string): string {
  if (!/_xl/i.test(stored)) return stored;
  const shown: FormulaToken[] = [];
  for (const token of formulaTokens(stored)) {
    const ours = token.kind === 'word' ? shownOurs(token.text) : undefined;
    if (ours !== undefined) {
      dropWorkbookNumber(shown);
      shown.push({ kind: 'word', text: ours });
    } else if (token.kind === 'word') shown.push({ kind: 'word', text: token.text.replace(prefix, '') });
    else shown.push(token);
  }
  return formulaOf(withSpillSigns(shown));
}

/**
 * A formula as a file stores it, from one as a person types it; the other direction of `shownFormula`, but for case,
 * workbook numbers, and `[@Column]`, which files write `[[#This Row],[Column]]`. A formula in its stored form stays as it is.
 */
export function storedFormula(shown: string): string {
  const tokens = withoutSpillSigns(formulaTokens(shown));
  const parameters = parameterTokens(tokens);
  return tokens
    .map((token, index) => {
      if (token.kind === 'bracket') return storedColumns(token.text);
      if (token.kind !== 'word') return token.text;
      if (parameters.has(index)) return `_xlpm.${token.text}`;
      if (tokens[nextToken(tokens, index)]?.text !== '(') return token.text;
      const ours = storedOurs(token.text);
      if (ours !== undefined) return ours;
      return storedPrefix(token.text) + token.text;
    })
    .join('');
}

/** `[2]!` before a function's name leads to the add-in's file, where Excel found it once. */
function dropWorkbookNumber(tokens: FormulaToken[]): void {
  if (tokens.at(-1)?.text !== '!' || tokens.at(-2)?.kind !== 'bracket') return;
  tokens.length -= 2;
}

function storedColumns(bracket: string): string {
  const row = /^\[@(\[.*\]|[^[\]]+)\]$/s.exec(bracket)?.[1];
  if (row === undefined) return bracket;
  return `[[#This Row],${row.startsWith('[') ? row : `[${row}]`}]`;
}
