import { FileRefused } from '../../zip/refused.ts';
import { customFormats, styleList } from '../../write/styles/collection.ts';
import { existingFont, plainFont } from '../../write/styles/font.ts';
import { solid } from '../../write/styles/markup.ts';
import { builtInFormat, firstCustomId } from '../../write/styles/numberFormat.ts';
import { attribute, child, type Element, outline } from '../../write/xml/outline.ts';
import { splice } from '../../write/xml/splice.ts';
import { escapeXml } from '../../write/xml/text.ts';
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

/** Programs open no workbook with more cell styles (common practice, no source). */
const greatestFormatCount = 64_000;

/**
 * New cell styles made from those of a style sheet (ECMA-376 part 1, section 18.8), which keep their numbers. Undefined for
 * a style sheet without cell styles; `text` throws FileRefused where there are more than programs open.
 */
export function restyle(text: string, part: string): Restyled | undefined {
  const root = outline(text, part);
  const existing = child(root, 'cellXfs')?.children ?? [];
  if (existing.length === 0) return undefined;
  const p = root.prefix;
  const lists = {
    formats: styleList(text, root, 'numFmts'),
    fonts: styleList(text, root, 'fonts'),
    fills: styleList(text, root, 'fills'),
    cells: styleList(text, root, 'cellXfs'),
  };
  const formatIds = new Map(customFormats(root));
  const formatId = (code: string): number => {
    const known = builtInFormat(code) ?? formatIds.get(code);
    if (known !== undefined) return known;
    const id = Math.max(firstCustomId - 1, ...formatIds.values()) + 1;
    formatIds.set(code, id);
    lists.formats.index(`<${p}numFmt numFmtId="${id}" formatCode="${escapeXml(code)}"/>`);
    return id;
  };
  const fontId = (format: Element, change: LookChange): number => {
    const base = existingFont(text, root, Number(attribute(format, 'fontId') ?? 0)) ?? plainFont(p);
    return lists.fonts.index(changedFont(p, base, change));
  };
  return {
    has: (style) => existing[style] !== undefined,
    changed(base, change) {
      const format = existing[base] ?? existing[0];
      if (format === undefined) return base;
      const { numberFormat, fill } = change;
      const ids = {
        ...(numberFormat !== undefined && { numFmtId: formatId(numberFormat) }),
        ...(changesFont(change) && { fontId: fontId(format, change) }),
        // Fill 0 of every workbook is none (ECMA-376 part 1, section 18.8.20, common practice).
        ...(fill !== undefined && { fillId: fill === null ? 0 : lists.fills.index(solid(p, fill)) }),
      };
      return lists.cells.index(changedFormat(text, format, ids, change));
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
