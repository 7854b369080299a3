import type { Area } from '../../../cells/sheet.ts';
import { columnLetters } from '../../../cells/address.ts';

/** Greatest length of the addresses that Excel takes for a set of areas (public reference: 8,192). */
const longestAddresses = 8_000;

/**
 * Gathers cells of equal key into rectangles, few and large: runs down each column, and runs of the same rows side by side.
 * Cells whose key is empty or missing belong to none. `top` is the sheet's row of the first row.
 */
export function rectanglesByKey(
  rows: readonly (readonly (string | undefined)[])[],
  top: number,
): Map<string, Area[]> {
  const columns = rows.reduce((most, row) => Math.max(most, row.length), 0);
  const found = new Map<string, Area[]>();
  let before = new Map<string, Area>();
  for (let column = 0; column < columns; column++) {
    const runs = new Map<string, Area>();
    for (const { key, from, to } of runsDown(rows, column)) {
      const where = `${from} ${to} ${key}`;
      const left = before.get(where)?.left ?? column + 1;
      runs.set(where, { top: top + from, left, bottom: top + to, right: column + 1 });
    }
    for (const [where, area] of before) if (!runs.has(where)) keep(found, where, area);
    before = runs;
  }
  for (const [where, area] of before) keep(found, where, area);
  return found;
}

interface RunDown {
  readonly key: string;
  readonly from: number;
  readonly to: number;
}

function runsDown(rows: readonly (readonly (string | undefined)[])[], column: number): RunDown[] {
  const runs: RunDown[] = [];
  let from = 0;
  for (let at = 1; at <= rows.length; at++) {
    const key = rows[from]?.[column] ?? '';
    if (at < rows.length && (rows[at]?.[column] ?? '') === key) continue;
    if (key !== '') runs.push({ key, from, to: at - 1 });
    from = at;
  }
  return runs;
}

function keep(found: Map<string, Area[]>, where: string, area: Area): void {
  const key = where.replace(/^\d+ \d+ /, '');
  const areas = found.get(key) ?? [];
  found.set(key, areas);
  areas.push(area);
}

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
