import type { AstExpression } from '@borgar/fx';
import { callable } from '../call/callable.ts';
import type { Argument } from '../declare/argument.ts';
import type { WorksheetFunction } from '../declare/declare.ts';
import { FunctionError } from '../functionError.ts';

/**
 * Whether a function takes the units of a call, all of them texts or left out, beside one another: a native formula
 * calculates with their factors alone, and would turn mil into g.
 */
export function unitsTaken(declared: WorksheetFunction, given: readonly (AstExpression | null)[]): boolean {
  if (!declared.arguments.some(({ kind }) => kind === 'unit')) return true;
  const tried = declared.arguments.map((argument, index) => inPlaceOf(argument, given[index] ?? null));
  return !(callable(declared)(...tried) instanceof FunctionError);
}

/** The unit itself, and of any other argument a value that it takes. */
function inPlaceOf(argument: Argument, node: AstExpression | null): unknown {
  switch (argument.kind) {
    case 'unit':
      return node?.type === 'Literal' ? node.value : null;
    case 'choice':
      return argument.choices[0];
    case 'number':
      return argument.range === 'count' || argument.range === 'countOrNone' ? 1 : 0.5;
    case 'members':
    case 'series':
    case 'labels':
    case 'switch':
      return null;
  }
}
