import type { Band } from '../../method/range.ts';
import type { FunctionError } from '../functionError.ts';
import type { Argument, Values } from './argument.ts';

/**
 * The arithmetic of a function as a spreadsheet without it can do it. A text is a formula of functions that every
 * spreadsheet program has, over the names of the arguments; a unit stands for its factor, an argument left out for what
 * stands in its place. The ranges of the arguments are seen to where it is used, so it holds for arguments in their
 * ranges alone, and goes over ranges place by place.
 */
export type Native = string | NativeBy | NativePair;

/** A form for each choice of an argument; of a number that may be left out, `given` and `left out`. */
export interface NativeBy {
  readonly by: string;
  readonly forms: Readonly<Record<string, string>>;
}

/** The two cells of a pair. */
interface NativePair {
  readonly low: string;
  readonly high: string;
}

/** What the arithmetic of a function may give; a number that is not finite, or nothing, never leaves. */
export type Answer = number | string | Band | FunctionError | undefined | Line;

/** The cells of a result that is a row, or that runs along a series; "" leaves a cell empty. */
export type Line = readonly (number | string | FunctionError)[];

/** A formula with the result worked out outside this project. */
interface Example {
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
