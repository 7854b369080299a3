import { FileRefused } from '../zip/refused.ts';
import { styleList } from '../write/styles/collection.ts';
import { existingFont, plainFont, type FontProperties, fontMarkup, opaque } from '../write/styles/font.ts';
import { solid } from '../write/styles/markup.ts';
import { formatIds } from '../write/styles/formatIds.ts';
import { greatestFormatCount } from '../write/styles/namedStyles.ts';
import { styleSheet } from '../write/styles/styleSheet.ts';
import { attribute, type Element, child } from '../write/xml/outline.ts';
import { splice } from '../write/xml/splice.ts';
import type { StyleChange, StyleEdit } from './types.ts';
import { escapeXml } from '../write/xml/text.ts';

/** Numbers of the font, fill and number format that a cell style takes in place of its own. */
type FormatIds = Readonly<Partial<Record<'numFmtId' | 'fontId' | 'fillId', number>>>;

const applied = { numFmtId: 'applyNumberFormat', fontId: 'applyFont', fillId: 'applyFill' } as const;

/** The style that a cell gets, by its number, from the one it had. */
export type NewStyle = (style: string | undefined, look: StyleEdit) => string | undefined;

/** Cell styles of a workbook, with new ones made from them. */
export interface Restyled {
  /** Number of the cell style that is like `base` but for what changes. */
  readonly changed: (base: number, change: StyleChange) => number;
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
  const fontId = (format: Element, change: StyleChange): number => {
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

/** The styles of a workbook's edited looks; a file without styles keeps its cells plain. */
export function newStyles(styles: Restyled | undefined): NewStyle {
  return (style, look) => {
    if (styles === undefined) return style;
    const base = look.style !== undefined && styles.has(look.style) ? look.style : Number(style ?? 0);
    const number = look.change === undefined ? base : styles.changed(base, look.change);
    return number === Number(style ?? 0) ? style : String(number);
  };
}

/** Whether a change of look needs another font. */
function changesFont({ font, size, bold, italic, underline, strike, color }: StyleChange): boolean {
  return [font, size, bold, italic, underline, strike, color].some((value) => value !== undefined);
}

/** Markup of a font like `base` but for what changes; `p` is the prefix of the style sheet's elements. */
function changedFont(p: string, base: FontProperties, change: StyleChange): string {
  const properties = new Map(base);
  const set = (name: string, markup: string | undefined): void => {
    if (markup === undefined) properties.delete(name);
    else properties.set(name, `<${p}${name}${markup}/>`);
  };
  const switched = { b: change.bold, i: change.italic, u: change.underline, strike: change.strike };
  for (const [name, on] of Object.entries(switched)) {
    if (on !== undefined) set(name, on ? '' : undefined);
  }
  if (change.size !== undefined) set('sz', ` val="${change.size}"`);
  if (change.color !== undefined) {
    set('color', change.color === null ? undefined : ` rgb="${opaque(change.color)}"`);
  }
  if (change.font !== undefined) {
    set('name', ` val="${escapeXml(change.font)}"`);
    // What names the theme's font, and the kind of the one before, holds no longer.
    for (const name of ['scheme', 'family', 'charset']) set(name, undefined);
  }
  return fontMarkup(p, properties, {});
}

/** Markup of a cell style (`xf`) like an existing one but for these numbers and its alignment; borders, protection and all else stay. */
function changedFormat(text: string, format: Element, ids: FormatIds, change: StyleChange): string {
  const attributes = new Map(format.attributes.map(({ name, value }) => [name, value]));
  for (const name of Object.keys(applied) as (keyof typeof applied)[]) {
    if (ids[name] === undefined) continue;
    attributes.set(name, String(ids[name]));
    attributes.set(applied[name], '1');
  }
  const alignment = changedAlignment(format, change);
  if (alignment !== undefined) attributes.set('applyAlignment', '1');
  const old = child(format, 'alignment');
  const others = format.children
    .filter((part) => alignment === undefined || part !== old)
    .map(({ start, end }) => text.slice(start, end));
  const inside = (alignment ?? '') + others.join('');
  const start = `<${format.name}${markupOf(attributes)}`;
  return inside === '' ? `${start}/>` : `${start}>${inside}</${format.name}>`;
}

/** The alignment with what changes, empty for a plain one; `undefined` where nothing of it changes. */
function changedAlignment(format: Element, { align, valign, wrap }: StyleChange): string | undefined {
  if (align === undefined && valign === undefined && wrap === undefined) return undefined;
  const old = child(format, 'alignment');
  const attributes = new Map(old?.attributes.map(({ name, value }) => [name, value]));
  const set = (name: string, value: string | null | undefined): void => {
    if (value === null) attributes.delete(name);
    else if (value !== undefined) attributes.set(name, value);
  };
  set('horizontal', align);
  set('vertical', valign === 'bottom' ? null : valign);
  set('wrapText', wrap === undefined ? undefined : wrap ? '1' : null);
  // An indent has no meaning without a side (ECMA-376 part 1, section 18.8.1).
  if (align === null) attributes.delete('indent');
  return attributes.size === 0 ? '' : `<${format.prefix}alignment${markupOf(attributes)}/>`;
}

function markupOf(attributes: ReadonlyMap<string, string>): string {
  return [...attributes].map(([name, value]) => ` ${name}="${escapeXml(value)}"`).join('');
}
