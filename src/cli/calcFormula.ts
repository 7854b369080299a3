import { type AstExpression, type CallExpression, parse, tokenize } from '@borgar/fx';
import { type Callable, callable } from '../functions/call/callable.ts';
import type { Result } from '../functions/call/result.ts';
import { NAMESPACE, catalogue } from '../functions/catalogue.ts';
import { optional } from '../functions/declare/argument.ts';
import { FunctionError, refused } from '../functions/functionError.ts';
import { errorIn } from '../functions/read/cellKind.ts';
import { binaryOperators, unaryOperators } from './calcOperators.ts';
import { UsageRefused } from './refused.ts';

/** The longest formula that a spreadsheet cell holds. */
const LONGEST = 8192;

interface Known {
  readonly call: Callable;
  readonly least: number;
  readonly most: number;
}

const KNOWN: ReadonlyMap<string, Known> = new Map(
  catalogue.map((declared) => [
    `${NAMESPACE}.${declared.id}`,
    {
      call: callable(declared),
      least: declared.arguments.filter((argument) => !optional(argument)).length,
      most: declared.arguments.length,
    },
  ]),
);

/**
 * The result of one formula of worksheet functions, numbers, texts, arrays and arithmetic, with or without a leading
 * `=`. It has no cells to refer to.
 * @throws UsageRefused where the text is no formula.
 */
export function calculate(formula: string): Result {
  const tree = parsed(formula);
  const value = evaluate(tree);
  if (typeof value === 'boolean') return value ? 'TRUE' : 'FALSE';
  return value as Result;
}

function parsed(formula: string): AstExpression {
  const text = formula.trim();
  if (text.length > LONGEST) throw new UsageRefused(`The formula is longer than ${LONGEST} characters.`);
  try {
    return parse(tokenize(text.startsWith('=') ? text : `=${text}`));
  } catch (error) {
    const at =
      error instanceof Error && 'sourceOffset' in error
        ? ` near character ${String(error.sourceOffset)}`
        : '';
    throw new UsageRefused(
      `This is no formula${at}. Example: '=TRIPDRIFT.EFFECTIVE(5,200,160)'. See --help.`,
    );
  }
}

function evaluate(node: AstExpression): unknown {
  switch (node.type) {
    case 'Literal':
      return node.value;
    case 'ErrorLiteral':
      return errorIn({ code: node.value });
    case 'ArrayExpression':
      return node.elements.map((row) => row.map(evaluate));
    case 'CallExpression':
      return call(node);
    case 'UnaryExpression': {
      const operation = unaryOperators.get(node.operator);
      return operation ? operation(evaluateFirst(node.arguments)) : noOperator(node.operator);
    }
    case 'BinaryExpression': {
      const operation = binaryOperators.get(node.operator);
      return operation ? operation(...node.arguments.map(evaluate)) : noOperator(node.operator);
    }
    case 'ReferenceIdentifier':
      return new FunctionError(
        '#REF!',
        `There are no cells here: enter a value in place of ${node.value.slice(0, 20)}.`,
      );
    case 'LetExpression':
    case 'LambdaExpression':
      return refused('LET and LAMBDA are not understood here: enter their values.');
  }
}

function evaluateFirst([first]: readonly AstExpression[]): unknown {
  return first && evaluate(first);
}

function noOperator(operator: string): FunctionError {
  return refused(`The operator ${operator} is not understood here: use + - * / ^ %.`);
}

function call({ callee, arguments: given }: CallExpression): unknown {
  const name = callee.name.toUpperCase();
  const known = KNOWN.get(name);
  if (known === undefined) {
    const meant = KNOWN.has(`${NAMESPACE}.${name}`) ? `; enter ${NAMESPACE}.${name}` : '; see --list';
    return new FunctionError('#NAME?', `${name.slice(0, 30)} is none of the functions${meant}.`);
  }
  if (given.length < known.least || given.length > known.most) {
    const range = known.least === known.most ? String(known.most) : `${known.least} to ${known.most}`;
    return refused(`${name} takes ${range} arguments, not ${given.length}: see --list.`);
  }
  // The parser leaves a place empty where an argument is left out between commas.
  return known.call(...(given as (AstExpression | null)[]).map((argument) => argument && evaluate(argument)));
}
