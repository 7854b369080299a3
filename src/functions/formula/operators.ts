import { type Callable, callable } from '../call/callable.ts';
import { number } from '../declare/argument.ts';
import type { Answer } from '../declare/declare.ts';
import { FunctionError } from '../functionError.ts';

const left = number('left', 'any', 'Left operand.');
const right = number('right', 'any', 'Right operand.');

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

/** Arithmetic of a formula; it goes over ranges and errors as the worksheet functions do. */
export const binaryOperators: ReadonlyMap<string, Callable> = new Map([
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
export const unaryOperators: ReadonlyMap<string, (operand: unknown) => unknown> = new Map([
  ['+', (operand: unknown) => operand],
  ['-', (operand: unknown) => binaryOperators.get('-')?.(0, operand)],
  ['%', (operand: unknown) => binaryOperators.get('/')?.(operand, 100)],
]);
