import type { Band } from '../../method/range.ts';
import type { FunctionError } from '../functionError.ts';
import type { Argument, Values } from './argument.ts';
import type { Native } from './native.ts';

/** What the arithmetic of a function may give; a number that is not finite, or nothing, never leaves. */
export type Answer = number | string | Band | FunctionError | undefined | Line;

/** The cells of a result that is a row, or that runs along a series; "" leaves a cell empty. */
export type Line = readonly (number | string | FunctionError)[];

/** A formula with the result worked out outside this project. */
export interface Example {
  /** With the namespace and a leading `=`. */
  readonly formula: string;
  readonly result: string;
}

interface Texts {
  /** A–Z alone: the spreadsheet stores it in every formula, so it never changes. */
  readonly id: string;
  readonly description: string;
  /** One cell or a pair for each place; a `row` of several; or a result that runs `along` the first series. */
  readonly result: 'number' | 'text' | 'pair' | 'row' | 'along';
  readonly resultDescription: string;
  readonly example: Example;
  /** Left out where nothing exact and short does the same. */
  readonly native?: Native;
}

/** One worksheet function as data: its texts, its arguments in order, and the arithmetic behind it. */
export interface WorksheetFunction extends Texts {
  readonly arguments: readonly Argument[];
  /** Takes one value for each argument, each already in its range. */
  readonly run: (...values: never[]) => Answer;
}

/** Ties the arguments of a function to the parameters of its arithmetic. */
export function declare<const A extends readonly Argument[]>(
  declared: Texts & { readonly arguments: A; readonly run: (...values: Values<A>) => Answer },
): WorksheetFunction {
  return { ...declared, run: declared.run as WorksheetFunction['run'] };
}
