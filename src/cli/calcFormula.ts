import type { AstExpression } from '@borgar/fx';
import type { Result } from '../functions/call/result.ts';
import { type FormulaPlace, evaluate } from '../functions/formula/evaluate.ts';
import { FormulaTooLarge, parseFormula } from '../functions/formula/parse.ts';
import { FunctionError } from '../functions/functionError.ts';
import { UsageRefused } from './refused.ts';

/** A command line: there are no cells, and what is not understood is an error like any other. */
const commandLine: FormulaPlace = {
  cellsAt: (reference) =>
    new FunctionError(
      '#REF!',
      `There are no cells here: enter a value in place of ${reference.slice(0, 20)}.`,
    ),
  operand: (value) => value,
  beyond: (why) => why,
};

/**
 * The result of one formula of worksheet functions, numbers, texts, arrays and arithmetic, with or without a leading
 * `=`. It has no cells to refer to.
 * @throws UsageRefused where the text is no formula.
 */
export function calculate(formula: string): Result {
  const value = evaluate(parsed(formula), commandLine);
  if (typeof value === 'boolean') return value ? 'TRUE' : 'FALSE';
  return value as Result;
}

function parsed(formula: string): AstExpression {
  const text = formula.trim();
  try {
    return parseFormula(text.startsWith('=') ? text : `=${text}`);
  } catch (error) {
    if (error instanceof FormulaTooLarge) throw new UsageRefused(`The formula is ${error.message}.`);
    const at =
      error instanceof Error && 'sourceOffset' in error
        ? ` near character ${String(error.sourceOffset)}`
        : '';
    throw new UsageRefused(
      `This is no formula${at}. Example: '=TRIPDRIFT.EFFECTIVE(5,200,160)'. See --help.`,
    );
  }
}
