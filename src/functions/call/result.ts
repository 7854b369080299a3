import type { Answer, Line } from '../declare/declare.ts';
import { FunctionError } from '../functionError.ts';

/** What one cell of a result holds: a finite number, a text, or an error with its reason. */
export type Single = number | string | FunctionError;

/** Rows of equal length, at least one of at least one cell. */
export type Matrix = Single[][];

export type Result = Single | Matrix;

/** The one way out for an answer of one cell: what is not finite, or missing, leaves as an error. */
export function single(answer: Answer): Single {
  if (typeof answer === 'number') return Number.isFinite(answer) ? answer : noNumber();
  if (typeof answer === 'string' || answer instanceof FunctionError) return answer;
  return noNumber();
}

/** The two cells of a pair; a text or an error stands in both. */
export function pairCells(answer: Answer): [low: Single, high: Single] {
  if (typeof answer === 'object' && 'low' in answer) return [single(answer.low), single(answer.high)];
  const both = single(answer);
  return [both, both];
}

/** A result of several cells as one row; an error stands alone. */
export function lineCells(answer: Answer): Single[] {
  return Array.isArray(answer) ? (answer as Line).map(single) : [single(answer)];
}

function noNumber(): FunctionError {
  return new FunctionError('#NUM!', 'No finite result for these numbers: check their size and units.');
}
