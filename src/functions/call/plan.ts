import { label, optional } from '../declare/argument.ts';
import type { Answer, WorksheetFunction } from '../declare/declare.ts';
import type { Reader } from '../read/reader.ts';
import { readerOf } from '../read/readerOf.ts';

/** A function made ready for many calls. All lists go argument by argument. */
export interface Plan {
  readonly labels: readonly string[];
  readonly readers: readonly Reader<unknown>[];
  /** Arguments that are read with their whole range, never spread. */
  readonly together: readonly boolean[];
  readonly required: readonly boolean[];
  readonly run: (...values: unknown[]) => Answer;
  /** Whether each place of the result is a pair of cells. */
  readonly pair: boolean;
}

export function planOf({ arguments: declared, run, result }: WorksheetFunction): Plan {
  return {
    labels: declared.map(label),
    readers: declared.map(readerOf),
    together: declared.map(({ kind }) => kind === 'members'),
    required: declared.map((argument) => !optional(argument)),
    run: run as (...values: unknown[]) => Answer,
    pair: result === 'pair',
  };
}
