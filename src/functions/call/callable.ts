import type { WorksheetFunction, Answer } from '../declare/declare.ts';
import { FunctionError, notAvailable, refused } from '../functionError.ts';
import { type Result, lineCells, pairCells, single, type Matrix, type Single } from './result.ts';
import { isRange, singleCell, reaches, BEYOND, type Range, type Shape, cellAt, shapeOf } from '../range.ts';
import { blank, type Reader } from '../read/cellKind.ts';
import { type Argument, label, optional } from '../declare/argument.ts';
import { type NumberRange, ranges } from '../declare/numberRange.ts';
import { readerOf } from '../read/readerOf.ts';

/** A function made ready for many calls. All lists go argument by argument. */
interface Plan {
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

interface Spread {
  readonly index: number;
  readonly range: Range;
  readonly shape: Shape;
}

type AnswerAt = (row: number, column: number) => Answer;

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
        cell = singleCell(cell);
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

/**
 * One result for each place of the largest ranges. A place that some range does not reach shows #N/A, as in a
 * spreadsheet; a place where every range is blank stays blank (""). A pair takes two columns, or, where the inputs are
 * a single row, two rows: low over high.
 */
function spread(given: readonly unknown[], plan: Plan): Result {
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
    const cell = plan.together[index] === true ? given[index] : singleCell(given[index]);
    const value = valueOf(plan, index, cell, true);
    if (value instanceof FunctionError) return value;
    values[index] = value;
  }
  const answerAt = answers(spreads, values, plan);
  return plan.result === 'pair' ? pairs(answerAt, rows, columns) : singles(answerAt, rows, columns);
}

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

function planOf({ arguments: declared, run, result }: WorksheetFunction): Plan {
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
function valueOf(plan: Plan, index: number, cell: unknown, single: boolean): unknown {
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
