import process from 'node:process';
import { type Command, commandAsTyped } from './command.ts';
import type { Single, Result } from '../functions/call/result.ts';
import { NAMESPACE, catalogue } from '../functions/catalogue.ts';
import { FunctionError } from '../functions/functionError.ts';
import { signature } from '../functions/reference.ts';
import { UsageRefused } from './refused.ts';
import { plain } from './terminal.ts';
import type { AstExpression } from '@borgar/fx';
import { type FormulaPlace, evaluate } from '../functions/formula/evaluate.ts';
import { FormulaTooLarge, parseFormula } from '../functions/formula/parse.ts';

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

/** What the command prints and the exit code it ends with. */
interface Printed {
  readonly out: string;
  readonly error: string;
  readonly exitCode: 0 | 2;
}

const calcHelp = `Works out one formula of the worksheet functions.

  ${commandAsTyped('calc')} '=TRIPDRIFT.EFFECTIVE(5,200,160)'

Numbers, "texts", arrays such as {1,2;3,4} (; begins a row), + - * / ^ % and functions within functions are understood;
there are no cells. The value is printed in full precision, a result of several cells as lines of cells with tabs
between. An error prints its code and reason on standard error, and the exit code is 2.

  --list   the functions and their arguments
  --help   this text
`;

/** `calc`: works out one formula and prints its value. */
export const calcProgram: Command = {
  run(args) {
    const { out, error, exitCode } = calcCommand(args);
    process.stdout.write(out);
    process.stderr.write(error);
    return exitCode;
  },
  failed: 'calc failed unexpectedly',
};

/**
 * The calc command.
 * @throws UsageRefused where there is not exactly one formula, or it is none.
 */
export function calcCommand(args: readonly string[]): Printed {
  const [formula, ...more] = args;
  if (formula === '--help' || formula === '-h') return printed(calcHelp);
  if (formula === '--list') return printed(list());
  if (formula === undefined || formula.trim() === '') throw new UsageRefused('Give one formula. See --help.');
  if (more.length > 0) throw new UsageRefused('Give one formula, in single quotes. See --help.');

  const result = calculate(formula);
  if (result instanceof FunctionError) return { out: '', error: `${reason(result)}\n`, exitCode: 2 };
  if (typeof result !== 'object') return printed(`${text(result)}\n`);
  const errors = result.flatMap((row, index) =>
    row.flatMap((cell, column) =>
      cell instanceof FunctionError ? [`row ${index + 1}, column ${column + 1}: ${reason(cell)}\n`] : [],
    ),
  );
  const out = result.map((row) => `${row.map(text).join('\t')}\n`).join('');
  return { out, error: errors.join(''), exitCode: errors.length === 0 ? 0 : 2 };
}

function printed(out: string): Printed {
  return { out, error: '', exitCode: 0 };
}

function text(cell: Single): string {
  if (cell instanceof FunctionError) return cell.code;
  return typeof cell === 'number' ? String(cell) : plain(cell);
}

function reason({ code, message }: FunctionError): string {
  return plain(`${code} ${message}`);
}

function list(): string {
  return catalogue
    .map((declared) => `${NAMESPACE}.${signature(declared)}\n    ${declared.description}\n`)
    .join('');
}

/**
 * The result of one formula of worksheet functions, numbers, texts, arrays and arithmetic, with or without a leading
 * `=`. It has no cells to refer to.
 * @throws UsageRefused where the text is no formula.
 */
function calculate(formula: string): Result {
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
