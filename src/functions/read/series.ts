import { type SeriesArgument, label } from '../declare/argument.ts';
import { FunctionError, refused } from '../functionError.ts';
import { type Range, shapeOf } from '../range.ts';
import { blank } from './cellKind.ts';
import { choiceReader } from './choice.ts';
import { numberReader } from './number.ts';
import type { Reader } from './reader.ts';

/**
 * The cells of a row or column in their order, `null` where one is blank. What can't be used is named by its place,
 * from 1: `Volts 3 is text "bad"`. A block is refused, since the order of its cells would be guessed.
 */
export function seriesReader(argument: SeriesArgument): (rows: Range) => unknown[] | FunctionError {
  const { cells, otherwise } = argument;
  const name = label(argument);
  const read: Reader<unknown> = cells.kind === 'number' ? numberReader(cells) : choiceReader(cells);

  return (given) => {
    const { rows, columns } = shapeOf(given);
    if (rows > 1 && columns > 1) return refused(`${name} is a block: select one row or one column.`);
    const values: unknown[] = [];
    for (const cell of given.flat()) {
      const value = blank(cell) ? null : read(cell, false);
      if (value instanceof FunctionError) return placed(value, name, values.length + 1);
      values.push(value);
    }
    if (values.some((value) => value !== null)) return values;
    return otherwise ? [...otherwise] : refused(`${name} is blank: select its cells.`);
  };
}

function placed({ code, message }: FunctionError, name: string, place: number): FunctionError {
  const own = message.startsWith(`${name} `);
  return new FunctionError(code, own ? `${name} ${place}${message.slice(name.length)}` : message);
}
