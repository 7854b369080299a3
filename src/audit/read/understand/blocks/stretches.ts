import { isBlank } from '../../../../cells/cell.ts';
import { type Sheet } from '../../../../cells/sheet.ts';
import { isAmount, isYear } from './cellKind.ts';

interface RowTexts {
  readonly filled: readonly number[];
  readonly amounts: number;
}

/** Columns between which a header stands: all of its row, or what is apart from another table's numbers. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
}

export function textsOf(sheet: Sheet, row: number, { from, to }: Stretch): RowTexts {
  const cells = sheet.rows[row - 1] ?? [];
  const filled: number[] = [];
  let amounts = 0;
  for (let column = from; column <= Math.min(to, cells.length); column++) {
    const cell = cells[column - 1] ?? null;
    if (isBlank(cell)) continue;
    filled.push(column);
    if (isAmount(cell) && !isYear(cell)) amounts++;
  }
  return { filled, amounts };
}

/** The stretches of a row that may hold a header: the whole row where no number stands in it, else those without numbers between blank cells. */
export function stretchesOf(sheet: Sheet, row: number): readonly Stretch[] {
  const cells = sheet.rows[row - 1] ?? [];
  let texts = 0;
  let blanks = false;
  let amounts = 0;
  for (const cell of cells) {
    if (cell === null) blanks = true;
    else if (typeof cell === 'string') texts++;
    else if (isAmount(cell) && !isYear(cell)) amounts++;
  }
  if (texts < 2) return [];
  if (amounts === 0) return [{ from: 1, to: 16_384 }];
  if (!blanks || texts < 3) return [];
  const found: Stretch[] = [];
  let from = 1;
  for (let column = 1; column <= cells.length + 1; column++) {
    if (column <= cells.length && !isBlank(cells[column - 1] ?? null)) continue;
    if (column - from >= 3 && textsOf(sheet, row, { from, to: column - 1 }).amounts === 0)
      found.push({ from, to: column - 1 });
    from = column + 1;
  }
  return found;
}
