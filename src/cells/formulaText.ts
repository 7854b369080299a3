/** Behind the quote that closes the one at `start`; a doubled one closes nothing. */
export function behindQuote(formula: string, start: number, quote: string): number {
  let at = start + 1;
  while (at < formula.length) {
    if (formula[at] !== quote) at++;
    else if (formula[at + 1] === quote) at += 2;
    else return at + 1;
  }
  return at;
}

/**
 * Behind the brackets that open at `start`: they nest, and an apostrophe takes the meaning from the character after it
 * (ECMA-376 part 1, section 18.17.2.3 leaves this to practice).
 */
export function behindBrackets(formula: string, start: number): number {
  let depth = 0;
  for (let at = start; at < formula.length; at++) {
    const character = formula[at];
    if (character === "'") at++;
    else if (character === '[') depth++;
    else if (character === ']' && --depth === 0) return at + 1;
  }
  return formula.length;
}
