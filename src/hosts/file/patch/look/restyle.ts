import { FileRefused } from '../../zip/refused.ts';
import { styleList } from '../../write/styles/collection.ts';
import { existingFont, plainFont } from '../../write/styles/font.ts';
import { solid } from '../../write/styles/markup.ts';
import { formatIds } from '../../write/styles/formatIds.ts';
import { greatestFormatCount } from '../../write/styles/namedStyles.ts';
import { styleSheet } from '../../write/styles/styleSheet.ts';
import { attribute, type Element } from '../../write/xml/outline.ts';
import { splice } from '../../write/xml/splice.ts';
import type { LookChange } from '../types.ts';
import { changedFont, changesFont } from './changedFont.ts';
import { changedFormat } from './changedFormat.ts';

/** Cell styles of a workbook, with new ones made from them. */
export interface Restyled {
  /** Number of the cell style that is like `base` but for what changes. */
  readonly changed: (base: number, change: LookChange) => number;
  readonly has: (style: number) => boolean;
  /** The style sheet with all of them; as it was where none was asked for. */
  readonly text: () => string;
}

/**
 * New cell styles made from those of a style sheet (ECMA-376 part 1, section 18.8), which keep their numbers. Undefined for
 * a style sheet without cell styles; `text` throws FileRefused where there are more than programs open.
 */
export function restyle(text: string, part: string): Restyled | undefined {
  const sheet = styleSheet(text, part);
  const existing = sheet.count('cellXfs');
  if (existing === 0) return undefined;
  const p = sheet.prefix;
  const formats = formatIds(sheet);
  const lists = {
    formats: formats.list,
    fonts: styleList(sheet, 'fonts'),
    fills: styleList(sheet, 'fills'),
    cells: styleList(sheet, 'cellXfs'),
  };
  const fontId = (format: Element, change: LookChange): number => {
    const base = existingFont(sheet, Number(attribute(format, 'fontId') ?? 0)) ?? plainFont(p);
    return lists.fonts.index(changedFont(p, base, change));
  };
  return {
    has: (style) => Number.isInteger(style) && style >= 0 && style < existing,
    changed(base, change) {
      const entry = sheet.entry('cellXfs', base) ?? sheet.entry('cellXfs', 0);
      if (entry === undefined) return base;
      const format = entry.element;
      const { numberFormat, fill } = change;
      const ids = {
        ...(numberFormat !== undefined && { numFmtId: formats.idOf(numberFormat) }),
        ...(changesFont(change) && { fontId: fontId(format, change) }),
        // Fill 0 of every workbook is none (ECMA-376 part 1, section 18.8.20, common practice).
        ...(fill !== undefined && { fillId: fill === null ? 0 : lists.fills.index(solid(p, fill)) }),
      };
      return lists.cells.index(changedFormat(entry.text, format, ids, change));
    },
    text() {
      if (lists.cells.size() > greatestFormatCount) {
        throw new FileRefused(
          `With the looks changed here the workbook would hold ${lists.cells.size()} cell styles, more than spreadsheet programs open. Change the looks of fewer cells.`,
        );
      }
      return splice(
        text,
        Object.values(lists).flatMap((list) => list.edits()),
      );
    },
  };
}
