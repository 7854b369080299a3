import { cellAddress } from '../../cells/address.ts';
import type { CellPlace } from '../../hosts/port/port.ts';
import type { QuickValues } from './quickAnswer.ts';
import { cellFields, type QuickState } from './quickState.ts';

/** A cell as people write it, with its sheet: `Monitor!C5`. */
export function addressOf({ sheet, row, column }: CellPlace): string {
  return `${sheet}!${cellAddress(row, column)}`;
}

/** Whether two places are the same cell. Sheet names differ in more than case. */
export function sameCell(a: CellPlace, b: CellPlace): boolean {
  return a.sheet.toLowerCase() === b.sheet.toLowerCase() && a.row === b.row && a.column === b.column;
}

/**
 * The formula for a cell: references to the cells that fields were taken from, numbers for the rest. Numbers are in the
 * notation of formulas as hosts take them, with a decimal point; a sheet's name is always quoted.
 */
export function effectiveFormula(
  values: QuickValues,
  sources: QuickState['sources'],
  target: CellPlace,
): string {
  const parts = cellFields.map((field) => {
    const source = sources[field];
    if (!source) return String(values[field]).toUpperCase();
    const address = cellAddress(source.row, source.column);
    return source.sheet === target.sheet ? address : `'${source.sheet.replaceAll("'", "''")}'!${address}`;
  });
  return `=TRIPDRIFT.EFFECTIVE(${parts.join(',')})`;
}
