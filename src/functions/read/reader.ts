import type { FunctionError } from '../functionError.ts';

/** Turns what stands in one cell into a value for the arithmetic; `single` tells a lone cell from a cell of a range. */
export type Reader<T> = (cell: unknown, single: boolean) => T | FunctionError;
