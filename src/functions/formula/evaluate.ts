import type { AstExpression, CallExpression } from '@borgar/fx';
import { type Callable, callable } from '../call/callable.ts';
import { NAMESPACE, catalogue } from '../catalogue.ts';
import { optional } from '../declare/argument.ts';
import { FunctionError, refused } from '../functionError.ts';
import { errorIn } from '../read/cellKind.ts';
import { binaryOperators, unaryOperators } from './operators.ts';

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

/** Where a formula is worked out. */
export interface FormulaPlace {
  /** The rows of cells that a reference or name leads to. */
  readonly cellsAt: (reference: string) => unknown;
  /** An operand of an operator, as the place takes it. */
  readonly operand: (value: unknown) => unknown;
  /** What becomes of something that is not understood here. */
  readonly beyond: (why: FunctionError) => unknown;
}

/**
 * The result of a formula of worksheet functions, numbers, texts, arrays and arithmetic; `place` tells its cells. Errors
 * of the functions are values: nothing is thrown but what `place` throws.
 */
export function evaluate(node: AstExpression, place: FormulaPlace): unknown {
  switch (node.type) {
    case 'Literal':
      return node.value;
    case 'ErrorLiteral':
      return errorIn({ code: node.value });
    case 'ArrayExpression':
      return node.elements.map((row) => row.map((element) => evaluate(element, place)));
    case 'CallExpression':
      return call(node, place);
    case 'UnaryExpression': {
      const operation = unaryOperators.get(node.operator);
      const [first] = node.arguments;
      if (!operation || !first) return place.beyond(noOperator(node.operator));
      return operation(place.operand(evaluate(first, place)));
    }
    case 'BinaryExpression': {
      const operation = binaryOperators.get(node.operator);
      if (!operation) return place.beyond(noOperator(node.operator));
      return operation(...node.arguments.map((operand) => place.operand(evaluate(operand, place))));
    }
    case 'ReferenceIdentifier':
      return place.cellsAt(node.value);
    case 'LetExpression':
    case 'LambdaExpression':
      return place.beyond(refused('LET and LAMBDA are not understood here: enter their values.'));
  }
}

function noOperator(operator: string): FunctionError {
  return refused(`The operator ${operator} is not understood here: use + - * / ^ %.`);
}

function call({ callee, arguments: given }: CallExpression, place: FormulaPlace): unknown {
  const name = callee.name.toUpperCase();
  const known = KNOWN.get(name);
  if (known === undefined) {
    const meant = KNOWN.has(`${NAMESPACE}.${name}`) ? `; enter ${NAMESPACE}.${name}` : '; see --list';
    return place.beyond(
      new FunctionError('#NAME?', `${name.slice(0, 30)} is none of the functions${meant}.`),
    );
  }
  if (given.length < known.least || given.length > known.most) {
    const range = known.least === known.most ? String(known.most) : `${known.least} to ${known.most}`;
    return place.beyond(refused(`${name} takes ${range} arguments, not ${given.length}: see --list.`));
  }
  // The parser leaves a place empty where an argument is left out between commas.
  return known.call(
    ...(given as (AstExpression | null)[]).map((argument) => argument && evaluate(argument, place)),
  );
}
