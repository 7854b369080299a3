import type { SheetTable } from '../../../../cells/sheet.ts';
import { reference } from '../../../formats/reference.ts';
import { parseArea } from '../../read/area.ts';
import { FileRefused, oneLine } from '../../zip/refused.ts';
import { attribute, child, type Element } from '../../write/xml/outline.ts';
import { cuts, moved, movedSpan, type SheetMove } from './axis.ts';

/** Refuses what would leave a table without a heading, a row of data or one of its columns, or with a column nobody named. */
export function refuseTable({ area, name, headerRow, totalsRow }: SheetTable, move: SheetMove): void {
  const { rows, columns, sheet } = move;
  const title = `the table “${oneLine(name, 40)}” in ${reference(area)}`;
  const refuse = (what: string): never => {
    throw new FileRefused(
      `Sheet “${oneLine(sheet)}”: ${what}, which a copy cannot keep. Undo it, or do it in a spreadsheet program and open the file again.`,
    );
  };
  const [first, last] = [area.top + Number(headerRow), area.bottom - Number(totalsRow)];
  if (cuts(columns, area.left, area.right)) refuse(`a column was inserted into or deleted from ${title}`);
  if (headerRow && moved(rows, area.top) === undefined)
    refuse(`the row of headings was deleted from ${title}`);
  if (totalsRow && moved(rows, area.bottom) === undefined)
    refuse(`the row of totals was deleted from ${title}`);
  if (!movedSpan(rows, first, last, Infinity)) refuse(`all rows were deleted from ${title}`);
}

/** Refuses steps through a pivot table, which programs lay out themselves. */
export function refusePivot(root: Element, move: SheetMove): void {
  const area = parseArea(attribute(child(root, 'location') ?? root, 'ref') ?? '');
  if (!area || !isCut(area, move)) return;
  throw new FileRefused(
    `Sheet “${oneLine(move.sheet)}”: rows or columns were inserted into or deleted from the pivot table in ${reference(area)}. Undo it; change the pivot table in a spreadsheet program.`,
  );
}

/** Refuses columns that come into or go from a filter that hides rows: it knows its columns by their number. */
export function refuseFilter(root: Element, move: SheetMove): void {
  const filter = child(root, 'autoFilter');
  const area = filter && parseArea(attribute(filter, 'ref') ?? '');
  if (!area || !child(filter, 'filterColumn') || !cuts(move.columns, area.left, area.right)) return;
  throw new FileRefused(
    `Sheet “${oneLine(move.sheet)}”: a column was inserted into or deleted from the filtered range ${reference(area)}. Undo it, or clear the filter in a spreadsheet program and open the file again.`,
  );
}

function isCut(area: SheetTable['area'], { rows, columns }: SheetMove): boolean {
  return cuts(rows, area.top, area.bottom) || cuts(columns, area.left, area.right);
}
