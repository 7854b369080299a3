import type { EditablePart } from '../../write/package/editable.ts';
import { outline } from '../../write/xml/outline.ts';
import { type Edit, splice } from '../../write/xml/splice.ts';
import { mapSheet } from '../sheetMap.ts';
import { type ElementMove, movedElement } from './movedElements.ts';
import { movedRows } from './movedRows.ts';
import { refuseFilter } from './refuseMove.ts';
import type { SheetMove } from './types.ts';

/** What of a worksheet part is read for moving it. */
export type SheetSource = Pick<EditablePart, 'text'> & { readonly part: string; readonly sheet: string };

/** The text of a worksheet part after the steps of its sheet (`move`), and with formulas that lead to others' new places. */
export function movedSheet(
  { text, part, sheet }: SheetSource,
  move: SheetMove | undefined,
  formulaOf: (stored: string) => string,
): string {
  const map = mapSheet(text, part, sheet, () => true);
  const { openEnd, closeStart } = map.sheetData;
  // Around the rows; places behind them are those of the text without them.
  const around = text.slice(0, openEnd) + text.slice(closeStart);
  const root = outline(around, part);
  if (move) refuseFilter(root, move);
  const how: ElementMove = { text: around, formulaOf, move };
  const back = (at: number): number => (at > openEnd ? at + closeStart - openEnd : at);
  const outside = (movedElement(root, how) ?? []).map((edit): Edit => ({
    ...edit,
    from: back(edit.from),
    to: back(edit.to),
  }));
  return splice(text, [...outside, ...movedRows(text, map, move, formulaOf)]);
}
