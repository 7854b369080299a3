import { columnNumber } from '../../../cells/address.ts';
import type { Area } from '../../../cells/sheet.ts';

export const lastRow = 1_048_576;
export const lastColumn = 16_384;

/** A cell's row and column, both from 1. */
export interface Position {
  readonly row: number;
  readonly column: number;
}

/** The position an address such as `F14` names, in any case; undefined where it is no address or off the sheet. */
export function parseAddress(address: string): Position | undefined {
  const [, letters, digits] = /^([A-Za-z]{1,3})([1-9]\d{0,6})$/.exec(address) ?? [];
  const column = columnNumber(letters ?? '');
  const row = Number(digits);
  return column <= lastColumn && row <= lastRow ? { row, column } : undefined;
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
