import type { Area } from '../../cells/sheet.ts';
import type { CellValue } from './cellValue.ts';

/** How often the areas of a rule hold what a cell says: texts without regard to case, blank cells never. */
export function tally(
  areas: readonly Area[],
  valueAt: (row: number, column: number) => CellValue,
): (value: CellValue) => number {
  const counts = new Map<string, number>();
  for (const { top, left, bottom, right } of areas) {
    for (let row = top; row <= bottom; row++) {
      for (let column = left; column <= right; column++) {
        const key = keyOf(valueAt(row, column));
        if (key !== undefined) counts.set(key, (counts.get(key) ?? 0) + 1);
      }
    }
  }
  return (value) => counts.get(keyOf(value) ?? '') ?? 0;
}

function keyOf(value: CellValue): string | undefined {
  if (value === null || value === '') return undefined;
  return `${typeof value} ${String(value).toLowerCase()}`;
}
