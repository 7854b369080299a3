import type { Area } from '../../../cells/sheet.ts';

export const lastRow = 1_048_576;
export const lastColumn = 16_384;

/** A cell's row and column, both from 1. */
export interface Position {
  readonly row: number;
  readonly column: number;
}

/**
 * The position an address such as `F14` names, in any case; undefined where it is no address or off the sheet.
 * By character codes and not by a pattern: every cell of every sheet comes through here.
 */
export function parseAddress(address: string): Position | undefined {
  let at = 0;
  let column = 0;
  for (; at < address.length; at++) {
    const letter = address.charCodeAt(at) & ~0x20;
    if (letter < 65 || letter > 90) break;
    column = column * 26 + letter - 64;
  }
  const digitsFrom = at;
  let row = 0;
  for (; at < address.length; at++) {
    const digit = address.charCodeAt(at) - 48;
    if (digit < 0 || digit > 9) break;
    row = row * 10 + digit;
  }
  const isAddress = at === address.length && address.charCodeAt(digitsFrom) !== 48;
  const isOnSheet = column >= 1 && column <= lastColumn && row >= 1 && row <= lastRow;
  return isAddress && isOnSheet ? { row, column } : undefined;
}

/** The area a reference such as `A1:C9` or `A1` names, its corners in either order; undefined where it is none or off the sheet. */
export function parseArea(reference: string): Area | undefined {
  const [from, to, ...rest] = reference.split(':').map(parseAddress);
  const other = reference.includes(':') ? to : from;
  if (from === undefined || other === undefined || rest.length > 0) return undefined;
  return {
    top: Math.min(from.row, other.row),
    left: Math.min(from.column, other.column),
    bottom: Math.max(from.row, other.row),
    right: Math.max(from.column, other.column),
  };
}

/**
 * The area a reference names, as `parseArea`, or all of the columns or rows of one such as `A:C` or `1:2`, with or without
 * `$`; undefined where it is none or off the sheet.
 */
export function parseRange(reference: string): Area | undefined {
  const plain = reference.replaceAll('$', '');
  const [from = '', to = '', ...rest] = plain.split(':');
  const both = (pattern: RegExp): boolean => rest.length === 0 && pattern.test(from) && pattern.test(to);
  if (both(/^[a-z]{1,3}$/i)) return parseArea(`${from}1:${to}${lastRow}`);
  if (both(/^\d{1,7}$/)) return parseArea(`A${from}:XFD${to}`);
  return parseArea(plain);
}
