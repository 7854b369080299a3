import { columnLetters, columnNumber } from '../../../src/cells/address.ts';
import type { Area } from '../../../src/cells/sheet.ts';
import { invalidArgument } from './hostError.ts';
import { isHostObject } from './hostObject.ts';

export const wholeSheet: Area = { top: 1, left: 1, bottom: 1_048_576, right: 16_384 };

/** The area of an address such as `A1`, `A1:C9`, `A:C` or `3:7`. */
export function areaAt(address: string): Area {
  const match = /^([A-Z]+)?(\d+)?(?::([A-Z]+)?(\d+)?)?$/i.exec(address.replaceAll('$', ''));
  const [, left, top, right = left, bottom = top] = match ?? [];
  if (!match || (left === undefined && top === undefined)) throw invalidArgument();
  if (!address.includes(':') && (left === undefined || top === undefined)) throw invalidArgument();
  const area = {
    top: top === undefined ? 1 : Number(top),
    left: left === undefined ? 1 : columnNumber(left),
    bottom: bottom === undefined ? wholeSheet.bottom : Number(bottom),
    right: right === undefined ? wholeSheet.right : columnNumber(right),
  };
  return checked(area);
}

/** An area given by indexes counted from 0 and sizes. */
export function areaByIndexes(row: unknown, column: unknown, rows: unknown, columns: unknown): Area {
  return checked({
    top: Number(row) + 1,
    left: Number(column) + 1,
    bottom: Number(row) + Number(rows),
    right: Number(column) + Number(columns),
  });
}

export function addressOf({ top, left, bottom, right }: Area): string {
  return `${columnLetters(left)}${top}:${columnLetters(right)}${bottom}`;
}

function checked(area: Area): Area {
  const { top, left, bottom, right } = area;
  const isOnSheet =
    top >= 1 &&
    left >= 1 &&
    bottom >= top &&
    right >= left &&
    bottom <= wholeSheet.bottom &&
    right <= wholeSheet.right;
  if (!isOnSheet || !Object.values(area).every(Number.isInteger)) throw invalidArgument();
  return area;
}

/** The area of a range that was given as an argument. */
export function areaOf(range: unknown): Area {
  if (!isHostObject(range)) throw invalidArgument();
  const { RowIndex, ColumnIndex, RowCount, ColumnCount } = range.get ?? {};
  return areaByIndexes(RowIndex?.(), ColumnIndex?.(), RowCount?.(), ColumnCount?.());
}
