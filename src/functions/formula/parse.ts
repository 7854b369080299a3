import { type AstExpression, parse, tokenize } from '@borgar/fx';

/**
 * A formula taken apart, with or without a leading `=`; calls say where they stand in the text given (`loc`).
 * @throws Error, with `sourceOffset` where it is known, for a text that is no formula.
 */
export function parseFormula(formula: string): AstExpression {
  return parse(tokenize(formula, { withLocation: true }));
}
