import { behindBrackets, behindQuote } from '../../cells/formulaText.ts';

/**
 * Whether each apostrophe outside of texts and brackets begins the name of a sheet that is closed and followed by `!` or
 * `:`, in one walk: the parser would go to the end of the formula from each that is not.
 */
export function quotesClose(formula: string): boolean {
  let at = 0;
  while (at < formula.length) {
    const character = formula[at];
    if (character === '"') at = behindQuote(formula, at, '"');
    else if (character === '[') at = behindBrackets(formula, at);
    else if (character === "'") {
      at = behindQuote(formula, at, "'");
      if (formula[at] !== '!' && formula[at] !== ':') return false;
    } else at++;
  }
  return true;
}
