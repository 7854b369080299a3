import type { Rows } from './book.ts';

/** Gaps from one to another, both included. */
export function gaps(from: number, to: number, step: number): number[] {
  return Array.from({ length: Math.round((to - from) / step) + 1 }, (_, at) => from + at * step);
}

/** Points of a straight record: gap and volts, in the units in which `sensitivity` is mV per gap unit. */
export function straight(
  sensitivity: number,
  at: readonly number[],
  offset = 0,
): [gap: number, volts: number][] {
  return at.map((gap) => [gap, offset - (sensitivity * gap) / 1000]);
}

/** Rows of a long table: the tag and more before each point. */
export function rowsOf(before: Rows[number], points: readonly (readonly [number, number])[]): Rows {
  return points.map(([gap, volts]) => [...before, gap, volts]);
}
