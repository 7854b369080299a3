import type { WorksheetFunction } from '../declare/declare.ts';
import { FunctionError } from '../functionError.ts';
import { planOf, valueOf } from './plan.ts';
import { type Result, lineCells, pairCells, single } from './result.ts';
import { isRange, loneCell, reaches } from '../range.ts';
import { spread } from './spread.ts';

/** A worksheet function as it is called: cells or ranges in, a value or rows of values out. It never throws. */
export type Callable = (...given: unknown[]) => Result;

/**
 * Makes a function callable. Its arguments are plain values or ranges (rows of cells) of numbers, text, booleans,
 * errors and blanks; anything beyond its own arguments is ignored. A range of one cell counts as that cell; larger ones
 * are spread, one result for each place. The first argument that can't be used decides the error.
 */
export function callable(worksheetFunction: WorksheetFunction): Callable {
  const plan = planOf(worksheetFunction);
  const { together, run, result } = plan;
  const count = together.length;
  // Filled anew by each call; nothing that it passes to calls back, so calls cannot overlap.
  const values: unknown[] = Array.from({ length: count }, () => undefined);

  function larger(given: readonly unknown[]): boolean {
    return given.some((value, index) => together[index] === false && isRange(value) && reaches(value));
  }

  return (...given) => {
    for (let index = 0; index < count; index++) {
      let cell = given[index];
      if (typeof cell === 'object' && isRange(cell) && together[index] !== true) {
        if (reaches(cell)) return spread(given, plan);
        cell = loneCell(cell);
      }
      const value = valueOf(plan, index, cell, true);
      if (value instanceof FunctionError) return larger(given) ? spread(given, plan) : value;
      values[index] = value;
    }
    const answer = run(...values);
    if (answer instanceof FunctionError) return answer;
    if (result === 'pair') return [pairCells(answer)];
    if (result === 'row') return [lineCells(answer)];
    if (result === 'along') {
      const cells = lineCells(answer);
      return across(given[together.indexOf(true)]) ? [cells] : cells.map((cell) => [cell]);
    }
    return single(answer);
  };
}

/** Whether a range is a single row of several cells. */
function across(value: unknown): boolean {
  return isRange(value) && value.length === 1 && reaches(value);
}
