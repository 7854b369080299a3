import { callable, type Callable } from '../../src/functions/call/callable.ts';
import type { Result } from '../../src/functions/call/result.ts';
import { catalogue } from '../../src/functions/catalogue.ts';
import { FunctionError } from '../../src/functions/functionError.ts';

export const calls: ReadonlyMap<string, Callable> = new Map(
  catalogue.map((declared) => [declared.id, callable(declared)]),
);

export function call(id: string, ...given: unknown[]): Result {
  const found = calls.get(id);
  if (found === undefined) throw new Error(`no function ${id}`);
  return found(...given);
}

/** `#VALUE! why` of an error, for comparison. */
export function why(result: unknown): string {
  return result instanceof FunctionError ? `${result.code} ${result.message}` : `no error: ${String(result)}`;
}

export const column = (values: readonly unknown[]): unknown[][] => values.map((value) => [value]);

/** The cells of a result that has several, all numbers or not, in their order. */
export function numbers(result: unknown): number[] {
  if (!Array.isArray(result)) throw new Error(why(result));
  return (result as number[][]).flat();
}
