import type { Answer } from '../declare/declare.ts';
import { FunctionError, notAvailable, refused } from '../functionError.ts';
import { blank } from '../read/cellKind.ts';
import { type Plan, valueOf } from './plan.ts';
import { type Matrix, type Result, type Single, pairCells, single } from './result.ts';
import { BEYOND, type Range, type Shape, cellAt, isRange, loneCell, reaches, shapeOf } from '../range.ts';

interface Spread {
  readonly index: number;
  readonly range: Range;
  readonly shape: Shape;
}

/**
 * One result for each place of the largest ranges. A place that some range does not reach shows #N/A, as in a
 * spreadsheet; a place where every range is blank stays blank (""). A pair takes two columns, or, where the inputs are
 * a single row, two rows: low over high.
 */
export function spread(given: readonly unknown[], plan: Plan): Result {
  const spreads = given.flatMap((range, index): Spread[] =>
    isRange(range) && plan.together[index] === false && reaches(range)
      ? [{ index, range, shape: shapeOf(range) }]
      : [],
  );
  const rows = Math.max(...spreads.map(({ shape }) => shape.rows));
  const columns = Math.max(...spreads.map(({ shape }) => shape.columns));
  if (plan.result === 'row' || plan.result === 'along')
    return refused(`${plan.labels[spreads[0]?.index ?? 0] ?? ''} is a range: give one cell.`);
  if (plan.result === 'pair' && rows > 1 && columns > 1)
    return refused('Give columns, one row a result, or a single row.');

  const values = given.slice(0, plan.readers.length);
  for (let index = 0; index < plan.readers.length; index++) {
    if (spreads.some((one) => one.index === index)) continue;
    const cell = plan.together[index] === true ? given[index] : loneCell(given[index]);
    const value = valueOf(plan, index, cell, true);
    if (value instanceof FunctionError) return value;
    values[index] = value;
  }
  const answerAt = answers(spreads, values, plan);
  return plan.result === 'pair' ? pairs(answerAt, rows, columns) : singles(answerAt, rows, columns);
}

type AnswerAt = (row: number, column: number) => Answer;

/** `values` holds what is not spread already, and is filled anew for each place. */
function answers(spreads: readonly Spread[], values: unknown[], plan: Plan): AnswerAt {
  const mayStayBlank = spreads.some(({ index }) => plan.required[index]);

  function allBlank(row: number, column: number): boolean {
    return spreads.every(({ range, shape }) => blank(cellAt(range, shape, row, column)));
  }

  return (row, column) => {
    for (const { index, range, shape } of spreads) {
      const cell = cellAt(range, shape, row, column);
      if (cell === BEYOND) return tooShort(plan.labels[index]);
      const value = valueOf(plan, index, cell, false);
      if (value instanceof FunctionError) {
        return mayStayBlank && blank(cell) && allBlank(row, column) ? '' : value;
      }
      values[index] = value;
    }
    return plan.run(...values);
  };
}

function tooShort(label = ''): FunctionError {
  return notAvailable(`${label} ends before the other ranges: select as many cells in each.`);
}

function singles(answerAt: AnswerAt, rows: number, columns: number): Matrix {
  const matrix: Matrix = [];
  for (let row = 0; row < rows; row++) {
    const line: Single[] = [];
    for (let column = 0; column < columns; column++) line.push(single(answerAt(row, column)));
    matrix.push(line);
  }
  return matrix;
}

function pairs(answerAt: AnswerAt, rows: number, columns: number): Matrix {
  const matrix: Matrix = columns > 1 ? [[], []] : [];
  for (let place = 0; place < Math.max(rows, columns); place++) {
    const [low, high] = columns > 1 ? pairCells(answerAt(0, place)) : pairCells(answerAt(place, 0));
    if (columns > 1) {
      matrix[0]?.push(low);
      matrix[1]?.push(high);
    } else matrix.push([low, high]);
  }
  return matrix;
}
