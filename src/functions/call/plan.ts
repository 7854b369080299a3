import { type Argument, label, optional } from '../declare/argument.ts';
import type { Answer, WorksheetFunction } from '../declare/declare.ts';
import { type NumberRange, ranges } from '../declare/numberRange.ts';
import { FunctionError } from '../functionError.ts';
import type { Reader } from '../read/reader.ts';
import { readerOf } from '../read/readerOf.ts';

/** A function made ready for many calls. All lists go argument by argument. */
export interface Plan {
  readonly labels: readonly string[];
  readonly readers: readonly Reader<unknown>[];
  /** Numbers strictly between these two need no reader; none do where `above` is infinite. */
  readonly above: readonly number[];
  readonly below: readonly number[];
  /** Arguments that are read with their whole range, never spread. */
  readonly together: readonly boolean[];
  readonly required: readonly boolean[];
  readonly run: (...values: unknown[]) => Answer;
  readonly result: WorksheetFunction['result'];
}

export function planOf({ arguments: declared, run, result }: WorksheetFunction): Plan {
  const plain = declared.map(plainRange);
  return {
    labels: declared.map(label),
    readers: declared.map(readerOf),
    above: plain.map((range) => range?.above ?? Infinity),
    below: plain.map((range) => range?.below ?? Infinity),
    together: declared.map(({ kind }) => kind === 'members' || kind === 'series' || kind === 'labels'),
    required: declared.map((argument) => !optional(argument)),
    run: run as (...values: unknown[]) => Answer,
    result,
  };
}

/** The range of an argument where its two ends say everything. */
function plainRange(argument: Argument): NumberRange | undefined {
  if (argument.kind !== 'number') return undefined;
  const range: NumberRange = ranges[argument.range];
  return !range.whole && (range.zero || range.above >= 0) ? range : undefined;
}

/** The value of one argument from one cell, or why it can't be used; a number in its plain range takes the short way. */
export function valueOf(plan: Plan, index: number, cell: unknown, single: boolean): unknown {
  if (
    typeof cell === 'number' &&
    cell > (plan.above[index] ?? Infinity) &&
    cell < (plan.below[index] ?? Infinity)
  ) {
    return cell;
  }
  const read = plan.readers[index];
  return read ? read(cell, single) : new FunctionError('#VALUE!', 'There are too many arguments.');
}
