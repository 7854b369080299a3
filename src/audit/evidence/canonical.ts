import type { Cell } from '../../cells/cell.ts';

/** Day 0 of the usual spreadsheet calendar, counted from 1970-01-01. */
const spreadsheetEpoch = -25_569;

/** Significant digits in which the numbers of inputs count. */
export const inputDigits = 12;

/** 1, 10, 100 …, each exactly a double. */
const powersOfTen = Array.from({ length: 23 }, (_, power) => 10 ** power);

/** How near the middle between two steps a number may come, by its significant digits. */
const nearMiddle = Array.from({ length: 13 }, (_, digits) => 10 ** (digits - 14));

/**
 * A number to some significant digits, 9 to 12. Programs that store 15 digits give the same number as those that store
 * all: it is brought to 15 first. A zero has no sign.
 */
export function canonicalNumber(value: number, digits: number): number {
  if (isShort(value, digits)) return value + 0;
  const size = Math.abs(value);
  if (size >= 1e-3 && size < 1e9) {
    const scale = powersOfTen[digits - 1 - Math.floor(Math.log10(size))] ?? NaN;
    const scaled = value * scale;
    const whole = Math.round(scaled);
    // Far from the middle between two steps neither the product's own error nor the digits beyond 15 matter.
    const fromMiddle = Math.abs(Math.abs(scaled - whole) - 0.5);
    if (fromMiddle > (nearMiddle[digits] ?? Infinity)) return whole / scale + 0;
  }
  return Number(Number(value.toPrecision(15)).toPrecision(digits)) + 0;
}

/** Whether a number is one of few decimals and no more than these digits, as nearly all that people write are. */
function isShort(value: number, digits: number): boolean {
  const scale = digits > 9 ? 1e6 : 1e4;
  const scaled = Math.round(value * scale);
  return scaled / scale === value && Math.abs(scaled) < (powersOfTen[digits] ?? NaN);
}

/** Line breaks as one character each, since files of different programs store them differently. */
export function canonicalText(text: string): string {
  return text.includes('\r') ? text.replace(/\r\n?/gu, '\n') : text;
}

/** Data as JSON with the keys of every object in order and numbers to `inputDigits`, so that equal data is equal text. */
export function canonicalJson(value: unknown): string {
  return JSON.stringify(value, (_key, part: unknown) => {
    if (typeof part === 'number') return canonicalNumber(part, inputDigits);
    if (part === null || typeof part !== 'object' || Array.isArray(part)) return part;
    return Object.fromEntries(Object.entries(part).toSorted(([a], [b]) => (a < b ? -1 : 1)));
  });
}

/** The number that a cell stores, however it is shown: a percentage as a fraction, a date as its day number from 1900. */
export function plainNumber(cell: Cell): number | undefined {
  if (typeof cell === 'number') return cell;
  if (cell === null || typeof cell !== 'object') return undefined;
  if ('percent' in cell) return cell.percent / 100;
  return 'day' in cell ? cell.day - spreadsheetEpoch : undefined;
}
