import type { EditablePart } from '../../write/package/editable.ts';
import { splice } from '../../write/xml/splice.ts';
import { alternativesRefused } from '../alternatives.ts';
import { aroundRows } from '../aroundRows.ts';
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
  if (map.hasAlternatives) throw alternativesRefused(sheet);
  const around = aroundRows(text, part, map);
  if (move) refuseFilter(around.root, move);
  const how: ElementMove = { text: around.text, formulaOf, move };
  const outside = around.back(movedElement(around.root, how) ?? []);
  return splice(text, [...outside, ...movedRows(text, map, move, formulaOf)]);
}
