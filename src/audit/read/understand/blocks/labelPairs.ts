import { isBlank } from '../../../../cells/cell.ts';
import { cellAt, type Sheet } from '../../../../cells/sheet.ts';
import { isAmount, isQuantityText, isYear, labelOf } from './cellKind.ts';

/** Whether the filled cells of a row are labels with their values beside them, and nothing else. */
export function arePairs(sheet: Sheet, row: number, filled: readonly number[]): boolean {
  for (let at = 0; at < filled.length; at += 2) {
    const column = filled[at] ?? 0;
    if (filled[at + 1] !== column + 1 || !isPairAt(sheet, row, column)) return false;
  }
  return filled.length > 1;
}

/** Whether a label stands in a cell and its value right beside it: `Machine`, `Ring motor`. */
export function isPairAt(sheet: Sheet, row: number, column: number): boolean {
  const [label, value] = [labelOf(cellAt(sheet, row, column)), cellAt(sheet, row, column + 1)];
  if (!label || label.unit !== null || typeof value !== 'string' || isBlank(value) || isYear(value))
    return false;
  if (isAmount(value) || isQuantityText(value)) return true;
  const other = labelOf(value);
  const isLabel =
    other &&
    (other.unit !== null ||
      other.standard.length > 0 ||
      [...other.concepts].some(
        ([concept, strength]) =>
          strength === 'strong' &&
          concept !== 'machine' &&
          !(concept === 'location' && label.concepts.has('location')),
      ));
  if (isLabel) return false;
  return (['machine', 'person', 'date', 'ordinal', 'location', 'tag'] as const).some((concept) =>
    label.concepts.has(concept),
  );
}
