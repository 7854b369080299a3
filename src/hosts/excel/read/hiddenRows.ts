import type { SheetOutline } from './outline.ts';
import type { Piece } from './pieces.ts';

/** Rows of a piece that are hidden or filtered away, counted from 1; asked for row by row only where some are and some are not. */
export function askForHiddenRows(
  range: Excel.Range,
  { sheet, top, bottom }: Piece<SheetOutline>,
): () => number[] {
  if (sheet.rowsHidden !== null) {
    return () => (sheet.rowsHidden === true ? span(top, bottom) : []);
  }
  const rows = range.getRowProperties({ rowHidden: true });
  return () => rows.value.flatMap(({ rowHidden }, index) => (rowHidden === true ? [top + index] : []));
}

function span(first: number, last: number): number[] {
  return Array.from({ length: last - first + 1 }, (_, index) => first + index);
}
