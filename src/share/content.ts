import { FunctionError } from '../functions/functionError.ts';
import type { ViewCell } from '../hosts/file/view/types.ts';

/** What a cell shows, as it can be stored. */
export type Content = Pick<ViewCell, 'value' | 'error'>;

/** Errors that say that nothing was calculated. */
export const notCalculated = new Set([
  '#NAME?',
  '#BUSY!',
  '#GETTING_DATA',
  '#CONNECT!',
  '#BLOCKED!',
  '#UNKNOWN!',
]);

/** Whether a cell shows a result. */
export function isCalculated(cell: ViewCell): boolean {
  return cell.uncalculated !== true && !isUnknown(cell);
}

/** Whether a cell shows that a function in it was not known, or not at hand. */
export function isUnknown({ error, value }: ViewCell): boolean {
  return error === true && notCalculated.has(String(value));
}

/** A result as a cell can store it. */
export function contentOf(value: unknown): Content {
  if (value instanceof FunctionError) return { value: value.code, error: true };
  if (typeof value === 'number' || typeof value === 'string' || typeof value === 'boolean') return { value };
  return { value: 0 };
}
