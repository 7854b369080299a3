import { type Element, outline } from '../write/xml/outline.ts';
import type { Edit } from '../write/xml/splice.ts';
import type { SheetMap } from './sheetMap.ts';

/** A worksheet part without its rows, which alone can be many. */
export interface AroundRows {
  readonly text: string;
  readonly root: Element;
  /** Edits of `text` as edits of the whole part. */
  readonly back: (edits: readonly Edit[]) => Edit[];
}

/** What stands in a worksheet part around its rows. */
export function aroundRows(
  text: string,
  part: string,
  { sheetData }: Pick<SheetMap, 'sheetData'>,
): AroundRows {
  const { openEnd, closeStart } = sheetData;
  const around = text.slice(0, openEnd) + text.slice(closeStart);
  const back = (at: number): number => (at > openEnd ? at + closeStart - openEnd : at);
  return {
    text: around,
    root: outline(around, part),
    back: (edits) => edits.map((edit) => ({ ...edit, from: back(edit.from), to: back(edit.to) })),
  };
}
