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

/** Behind the quote that closes the one at `start`; a doubled one closes nothing. */
function behindQuote(formula: string, start: number, quote: string): number {
  let at = start + 1;
  while (at < formula.length) {
    if (formula[at] !== quote) at++;
    else if (formula[at + 1] === quote) at += 2;
    else return at + 1;
  }
  return at;
}

/** Brackets nest; an apostrophe takes the meaning from the character behind it. */
function behindBrackets(formula: string, start: number): number {
  let depth = 0;
  for (let at = start; at < formula.length; at++) {
    const character = formula[at];
    if (character === "'") at++;
    else if (character === '[') depth++;
    else if (character === ']' && --depth === 0) return at + 1;
  }
  return formula.length;
}
