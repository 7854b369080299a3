import { type ErrorCode, FunctionError, refused } from '../functionError.ts';

/** Turns what stands in one cell into a value for the arithmetic; `single` tells a lone cell from a cell of a range. */
export type Reader<T> = (cell: unknown, single: boolean) => T | FunctionError;

/**
 * Whether a cell is empty: left out (`null`, `undefined`) or without a character. The object about the call itself,
 * which the spreadsheet appends to the arguments, counts as left out too: with an older copy of the function list it
 * stands where an optional argument is now expected.
 */
export function blank(cell: unknown): boolean {
  if (typeof cell === 'object') return cell === null || 'functionName' in cell;
  return cell === undefined || (typeof cell === 'string' && cell.trim() === '');
}

const PASSING: ReadonlySet<string> = new Set<ErrorCode>([
  '#VALUE!',
  '#NUM!',
  '#N/A',
  '#DIV/0!',
  '#NULL!',
  '#NAME?',
  '#REF!',
]);

/** The error in a cell, as itself; `undefined` where the cell holds none. Codes newer than the list become #VALUE!. */
export function errorIn(cell: unknown): FunctionError | undefined {
  if (cell instanceof FunctionError) return cell;
  if (typeof cell !== 'object' || cell === null || !('code' in cell)) return undefined;
  const { code } = cell;
  if (typeof code !== 'string' || !code.startsWith('#')) return undefined;
  const message = 'message' in cell && typeof cell.message === 'string' ? cell.message : '';
  return PASSING.has(code)
    ? new FunctionError(code as ErrorCode, message)
    : refused(`An argument holds the error ${code.slice(0, 20)}: correct that cell.`);
}

const LONGEST = 15;

/** A cell as a message shows it: short, one line, no invisible characters. */
export function shown(cell: unknown): string {
  if (typeof cell === 'number') return String(cell);
  if (typeof cell === 'boolean') return cell ? 'TRUE' : 'FALSE';
  if (typeof cell !== 'string') return 'a data type';
  const flat = cell.replaceAll(/[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}]+/gu, ' ').trim();
  const letters = Array.from(flat.slice(0, LONGEST * 2));
  return `text "${letters.length <= LONGEST ? flat : `${letters.slice(0, LONGEST - 1).join('')}…`}"`;
}
