import { type NumberArgument, label, type ChoiceArgument, type SeriesArgument } from '../declare/argument.ts';
import { type NumberRange, inRange, ranges } from '../declare/numberRange.ts';
import { FunctionError, refused } from '../functionError.ts';
import { blank, errorIn, shown, type Reader } from './cellKind.ts';
import { type Range, reaches, shapeOf } from '../range.ts';

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

/** Reads one of a few texts, in any case and with spaces about it. */
export function choiceReader(argument: ChoiceArgument): Reader<string> {
  const { choices, otherwise } = argument;
  const name = label(argument);
  // Quotation marks of more than three would make the message too long.
  const few = choices.length <= 3;
  const cure = few
    ? `enter ${choices.map((choice) => `"${choice}"`).join(' or ')}.`
    : `enter ${choices.slice(0, -1).join(', ')} or ${choices.at(-1) ?? ''}.`;
  const known = new Map(choices.map((choice) => [choice.toLowerCase(), choice]));

  return (cell) => {
    if (typeof cell === 'string') {
      const found = known.get(cell.trim().toLowerCase());
      if (found !== undefined) return found;
    }
    if (blank(cell)) return otherwise ?? refused(`${name} is blank: ${cure}`);
    if (cell === 0) return refused(`${name} is zero or blank: ${cure}`);
    return errorIn(cell) ?? refused(`${name} is ${shown(cell)}: ${cure}`);
  };
}

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
