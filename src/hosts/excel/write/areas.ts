import { columnLetters } from '../../../cells/address.ts';

/** Greatest length of the addresses that Excel takes for a set of areas (public reference: 8,192). */
const longestAddresses = 8_000;

/** The areas of a sheet with these addresses, as few objects as can name them all. */
export function areasAt(sheet: Excel.Worksheet, addresses: readonly string[]): Excel.RangeAreas[] {
  const lists: string[] = [];
  for (const address of addresses) {
    const last = lists.at(-1);
    if (last === undefined || last.length + 1 + address.length > longestAddresses) lists.push(address);
    else lists[lists.length - 1] = `${last},${address}`;
  }
  return lists.map((list) => sheet.getRanges(list));
}

/** Address of whole columns, counted from 1: `A:C`. */
export function columnsAt(from: number, to: number): string {
  return `${columnLetters(from)}:${columnLetters(to)}`;
}
