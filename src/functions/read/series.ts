import { type SeriesArgument, label } from '../declare/argument.ts';
import { FunctionError, refused } from '../functionError.ts';
import { type Range, reaches, shapeOf } from '../range.ts';
import { blank, errorIn } from './cellKind.ts';
import { choiceReader } from './choice.ts';
import { isNumeric, numberReader } from './number.ts';
import type { Reader } from './reader.ts';

/**
 * The cells of a row or column in their order, `null` where one is blank. What can't be used is named by its place,
 * from 1: `Volts 3 is text "bad"`. A block is refused, since the order of its cells would be guessed.
 */
export function seriesReader(argument: SeriesArgument): (rows: Range) => unknown[] | FunctionError {
  const { cells, otherwise, orText = false } = argument;
  const name = label(argument);
  const read: Reader<unknown> = cells.kind === 'number' ? numberReader(cells) : choiceReader(cells);

  return (given) => {
    const { rows, columns } = shapeOf(given);
    if (rows > 1 && columns > 1) return refused(`${name} is a block: select one row or one column.`);
    const several = orText && reaches(given);
    const values: unknown[] = [];
    for (const cell of given.flat()) {
      const value = blank(cell) ? null : several && withoutNumber(cell) ? NaN : read(cell, false);
      if (value instanceof FunctionError) return placed(value, name, values.length + 1);
      values.push(value);
    }
    if (values.some((value) => value !== null)) return values;
    return otherwise ? [...otherwise] : refused(`${name} is blank: select its cells.`);
  };
}

/** Whether a cell holds a text that is no number, or an error. */
function withoutNumber(cell: unknown): boolean {
  return typeof cell === 'string' ? !isNumeric(cell) : errorIn(cell) !== undefined;
}

function placed({ code, message }: FunctionError, name: string, place: number): FunctionError {
  const own = message.startsWith(`${name} `);
  return new FunctionError(code, own ? `${name} ${place}${message.slice(name.length)}` : message);
}
