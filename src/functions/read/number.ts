import { type NumberArgument, label } from '../declare/argument.ts';
import { type NumberRange, inRange, ranges } from '../declare/numberRange.ts';
import { FunctionError, refused } from '../functionError.ts';
import { blank, errorIn, shown } from './cellKind.ts';
import type { Reader } from './reader.ts';

const NUMERIC = /^\s*[+-]?(?:\d+(?:\.\d*)?|\.\d+)(?:e[+-]?\d+)?\s*$/i;

/** Whether a text is a number as a spreadsheet in English writes it; a decimal comma is not guessed at. */
export function isNumeric(text: string): boolean {
  return text.length < 400 && NUMERIC.test(text);
}

/** Reads a number: a text that is one counts in a single cell and is refused in a range, where it may be a slip. */
export function numberReader(argument: NumberArgument): Reader<number | null> {
  const range: NumberRange = ranges[argument.range];
  const name = label(argument);
  const { otherwise } = argument;

  function check(value: number): number | FunctionError {
    if (inRange(value, range)) return value;
    if (value === 0) return refused(`${name} is zero or blank: ${range.cure}`);
    if (!Number.isFinite(value))
      return new FunctionError('#NUM!', `${name} is not a finite number: ${range.cure}`);
    return refused(`${name} is ${value}: ${range.cure}`);
  }

  return (cell, single) => {
    if (typeof cell === 'number') return check(cell);
    if (blank(cell)) return otherwise === undefined ? refused(`${name} is blank: ${range.cure}`) : otherwise;
    if (typeof cell === 'string' && isNumeric(cell)) {
      return single
        ? check(Number(cell))
        : refused(`${name} has ${shown(cell)} in a range: enter it as a number.`);
    }
    return errorIn(cell) ?? refused(`${name} is ${shown(cell)}: ${range.cure}`);
  };
}
