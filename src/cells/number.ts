import type { Cell } from './cell.ts';
import type { Sheet } from './sheet.ts';

/** Why a cell is no number. */
export type NotANumber =
  | 'yes or no'
  | 'date'
  | 'spreadsheet error'
  | 'no stored result'
  | 'decimal or thousands'
  | 'no number'
  | 'too large'
  | 'too long';

/** What a cell says as a number. `percent`: it was shown with a percent sign, and `value` is the number before the sign. */
export type NumberRead =
  | { readonly value: number; readonly asText: boolean; readonly percent: boolean }
  | { readonly why: NotANumber };

const plain = /^[+-]?(?:\d+(?:\.\d*)?|\.\d+)(?:e[+-]?\d+)?$/iu;
const withComma = /^[+-]?\d*,\d+$/u;

/** Characters of the longest text that is taken for a number; a number written in full has at most 310 before its point. */
const longestNumber = 400;

/**
 * Reads a cell as a number. A text that is a number counts. In a workbook a decimal comma is understood only where it
 * can't be a thousands separator (`7,87` is; `1,234` is refused); in a text file the file's own decimal sign holds.
 */
export function readNumber(cell: Exclude<Cell, null>, plainText: Sheet['plainText']): NumberRead {
  if (typeof cell === 'number') return { value: cell, asText: false, percent: false };
  if (typeof cell === 'string') return readText(cell, plainText);
  if (typeof cell === 'boolean') return { why: 'yes or no' };
  if ('percent' in cell) return { value: cell.percent, asText: false, percent: true };
  if ('day' in cell) return { why: 'date' };
  return { why: cell.code.startsWith('#') ? 'spreadsheet error' : 'no stored result' };
}

function readText(text: string, plainText: Sheet['plainText']): NumberRead {
  const trimmed = text.trim();
  if (trimmed.length > longestNumber) return { why: 'too long' };
  let digits = trimmed.replace(/[\u2212\u2013]/gu, '-').replace(/^\+/u, '');
  const percent = /%$/u.test(digits);
  if (percent) digits = digits.slice(0, -1).trim();
  const asText = plainText === undefined;
  if (plainText?.decimal === ',' ? plain.test(digits) && !/\./u.test(digits) : plain.test(digits)) {
    return finite(Number(digits), asText, percent);
  }
  if (withComma.test(digits)) {
    const grouped = /^[+-]?[1-9]\d{0,2},\d{3}$/u.test(digits);
    if (plainText?.decimal === ',' || (!plainText && !grouped))
      return finite(Number(digits.replace(',', '.')), asText, percent);
    return { why: 'decimal or thousands' };
  }
  return { why: 'no number' };
}

function finite(value: number, asText: boolean, percent: boolean): NumberRead {
  return Number.isFinite(value) ? { value, asText, percent } : { why: 'too large' };
}
