import { type AstExpression, parse, tokenize } from '@borgar/fx';
import { levelsOf } from './nodes.ts';
import { behindBrackets, behindQuote } from '../../cells/formulaText.ts';

/** The longest formula that a spreadsheet cell holds. */
const longestFormula = 8192;
/** Levels of brackets and calls that a formula may have; spreadsheet programs take 64 of calls. */
export const mostLevels = 200;

/** A formula that no spreadsheet would take: too long, or nested too deep. The message is a clause for a person. */
export class FormulaTooLarge extends Error {}

/**
 * A formula taken apart, with or without a leading `=`; calls say where they stand in the text given (`loc`).
 * @throws FormulaTooLarge for a formula beyond `longestFormula` or `mostLevels`; Error, with `sourceOffset` where it is
 * known, for a text that is no formula.
 */
export function parseFormula(formula: string): AstExpression {
  if (formula.length > longestFormula)
    throw new FormulaTooLarge(`longer than ${longestFormula.toLocaleString('en')} characters`);
  if (!quotesClose(formula)) throw new Error('an apostrophe does not close');
  const tree = parsed(formula);
  if (levelsOf(tree, 'chains as one') > mostLevels) throw tooDeep();
  return tree;
}

function parsed(formula: string): AstExpression {
  try {
    return parse(tokenize(formula, { withLocation: true }));
  } catch (error) {
    // The parser goes down a level of brackets by calling itself.
    throw error instanceof RangeError ? tooDeep() : error;
  }
}

function tooDeep(): FormulaTooLarge {
  return new FormulaTooLarge(`nested more than ${mostLevels} levels deep`);
}

/**
 * Whether each apostrophe outside of texts and brackets begins the name of a sheet that is closed and followed by `!` or
 * `:`, in one walk: the parser would go to the end of the formula from each that is not.
 */
function quotesClose(formula: string): boolean {
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
