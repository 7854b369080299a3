import { isBlank, type Cell } from '../../../../cells/cell.ts';
import { type Sheet } from '../../../../cells/sheet.ts';
import { isAmount, isYear, labelOf } from './cellKind.ts';

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

/**
 * The stretches of a row that may hold a header: the whole row where no number stands in it, cut where tables beside each
 * other begin in different rows; else those without numbers between blank cells.
 */
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
  if (amounts === 0) return blanks ? apart(sheet, row) : [whole];
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

const whole: Stretch = { from: 1, to: 16_384 };
/** Rows below a header by which it is seen whether tables beside each other begin in different rows. */
const ahead = 12;

/** Parts of a row between columns that are blank for a while; neighbours whose first numbers stand in one row are one part. */
function apart(sheet: Sheet, row: number): readonly Stretch[] {
  const rows = sheet.rows.slice(row - 1, row + ahead);
  const widest = Math.max(...rows.map(({ length }) => length));
  const parts: { from: number; to: number; begins: number | null }[] = [];
  let from: number | null = null;
  for (let column = 1; column <= widest + 1; column++) {
    const filled = column <= widest && rows.some((cells) => !isBlank(cells[column - 1] ?? null));
    if (filled) from ??= column;
    else if (from !== null) {
      const own = { from, to: column - 1, begins: firstAmounts(rows, from, column - 1) };
      const last = parts.at(-1);
      if (last && (own.begins === null || last.begins === null || last.begins === own.begins)) {
        last.to = own.to;
        last.begins ??= own.begins;
      } else parts.push(own);
      from = null;
    }
  }
  if (parts.length < 2 || parts.every((part) => headsOwn(sheet, row, part) && beginsByHeading(rows, part)))
    return [whole];
  return parts.filter((part) => textsOf(sheet, row, part).filled.length > 1);
}

/** Whether nothing stands between a row and the first numbers below it but texts in the column of names: headings, no second row of headers. */
function beginsByHeading(
  [, ...below]: readonly (readonly Cell[])[],
  { from, to, begins }: Stretch & { readonly begins: number | null },
): boolean {
  return below
    .slice(0, Math.max(0, (begins ?? 1) - 1))
    .every((cells) => cells.slice(from, to).every((cell) => isBlank(cell)));
}

/** Whether a part of a row has labels of its own. */
function headsOwn(sheet: Sheet, row: number, part: Stretch): boolean {
  const cells = sheet.rows[row - 1] ?? [];
  return textsOf(sheet, row, part).filled.filter((column) => labelOf(cells[column - 1] ?? null)).length > 1;
}

/** The first row of numbers in some columns: with two of them, or with one above another; `null` where there is none. */
function firstAmounts(rows: readonly (readonly Cell[])[], from: number, to: number): number | null {
  const counts = rows.map(
    (cells) => cells.slice(from - 1, to).filter((cell) => isAmount(cell) && !isYear(cell)).length,
  );
  const two = counts.findIndex((count) => count > 1);
  const one = counts.findIndex((count, at) => count > 0 && (counts[at + 1] ?? 0) > 0);
  const first = two >= 0 && one >= 0 ? Math.min(two, one) : Math.max(two, one);
  return first < 0 ? null : first;
}
