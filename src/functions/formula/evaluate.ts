import type { AstExpression, BinaryExpression, CallExpression } from '@borgar/fx';
import { type Callable, callable } from '../call/callable.ts';
import { NAMESPACE, catalogue } from '../catalogue.ts';
import { optional, number } from '../declare/argument.ts';
import { FunctionError, refused } from '../functionError.ts';
import { errorIn } from '../read/cellKind.ts';
import { argumentsOf, calledName } from './nodes.ts';
import type { Answer } from '../declare/declare.ts';

const left = number('left', 'any', 'Left operand.');

const right = number('right', 'any', 'Right operand.');

/** Arithmetic of a formula; it goes over ranges and errors as the worksheet functions do. */
const binaryOperators: ReadonlyMap<string, Callable> = new Map([
  ['+', operator((one, other) => one + other)],
  ['-', operator((one, other) => one - other)],
  ['*', operator((one, other) => one * other)],
  [
    '/',
    operator((one, other) => (other === 0 ? new FunctionError('#DIV/0!', 'Division by zero.') : one / other)),
  ],
  ['^', operator((one, other) => one ** other)],
]);

/** Signs before or behind an operand, as an operation with a fixed one. */
const unaryOperators: ReadonlyMap<string, (operand: unknown) => unknown> = new Map([
  ['+', (operand: unknown) => operand],
  ['-', (operand: unknown) => binaryOperators.get('-')?.(0, operand)],
  ['%', (operand: unknown) => binaryOperators.get('/')?.(operand, 100)],
]);

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
    case 'BinaryExpression':
      return operatorChain(node, place);
    case 'ReferenceIdentifier':
      return place.cellsAt(node.value);
    case 'LetExpression':
    case 'LambdaExpression':
      return place.beyond(refused('LET and LAMBDA are not understood here: enter their values.'));
  }
}

/** Operators beside one another, from left to right: a sum of thousands of terms is as many levels deep. */
function operatorChain(node: BinaryExpression, place: FormulaPlace): unknown {
  const steps: { readonly operator: string; readonly right: AstExpression | undefined }[] = [];
  let first: AstExpression | undefined = node;
  while (first?.type === 'BinaryExpression') {
    const { operator, arguments: operands }: BinaryExpression = first;
    steps.push({ operator, right: operands[1] });
    first = operands[0];
  }
  const unknown = steps.find(({ operator }) => !binaryOperators.has(operator));
  if (unknown) return place.beyond(noOperator(unknown.operator));
  const operandOf = (operand: AstExpression | undefined): unknown =>
    place.operand(operand && evaluate(operand, place));
  return steps.reduceRight<unknown>(
    (left, { operator, right }) => binaryOperators.get(operator)?.(place.operand(left), operandOf(right)),
    first && evaluate(first, place),
  );
}

function noOperator(operator: string): FunctionError {
  return refused(`The operator ${operator} is not understood here: use + - * / ^ %.`);
}

function call(node: CallExpression, place: FormulaPlace): unknown {
  const name = calledName(node);
  if (name === undefined) return place.beyond(refused('A call needs the name of a function before it.'));
  const given = argumentsOf(node);
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
  return known.call(...given.map((argument) => argument && evaluate(argument, place)));
}

function operator(run: (one: number, other: number) => Answer): Callable {
  return callable({
    id: '',
    description: '',
    resultDescription: '',
    result: 'number',
    example: { formula: '', result: '' },
    arguments: [left, right],
    run,
  });
}
