import { columnLetters, cutSheetName, longestSheetName, withoutApostrophes } from '../../cells/address.ts';
import type { Area } from '../../cells/sheet.ts';

/** An area as formulas and files write it: `A1:C9`, a single cell as `A1`. */
export function reference({ top, left, bottom, right }: Area): string {
  const first = `${columnLetters(left)}${top}`;
  return top === bottom && left === right ? first : `${first}:${columnLetters(right)}${bottom}`;
}

/**
 * A free sheet name for each wanted one, in order. A spreadsheet compares names without case, allows 31 UTF-16
 * units, none of `: \ / ? * [ ]`, no apostrophe at either end, and keeps "History" to itself (common practice of
 * spreadsheet programs; no public standard). A taken name gets " (2)", " (3)" … and is cut to make room.
 */
export function freeNames(wanted: readonly string[], existing: Iterable<string>): readonly string[] {
  const taken = new Set(['history', ...Array.from(existing, (name) => name.toLowerCase())]);
  return wanted.map((name) => {
    const legal = legalName(name);
    let free = cutSheetName(legal, longestSheetName);
    for (let number = 2; taken.has(free.toLowerCase()); number++) {
      const suffix = ` (${number})`;
      free = cutSheetName(legal, longestSheetName - suffix.length) + suffix;
    }
    taken.add(free.toLowerCase());
    return free;
  });
}

/** A sheet name as formulas refer to it, always quoted: `Audit's` → `'Audit''s'`. */
export function quotedName(name: string): string {
  return `'${name.replaceAll("'", "''")}'`;
}

function legalName(name: string): string {
  const legal = withoutApostrophes(name.replace(/[:\\/?*[\]\p{Cc}\p{Surrogate}]/gu, ' ').trim());
  return legal === '' ? 'Sheet' : legal;
}
