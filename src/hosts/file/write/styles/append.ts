import type { CellStyle } from '../../../../sheets/model.ts';
import { FileRefused } from '../../zip/refused.ts';
import { attribute, child, outline, type Element } from '../xml/outline.ts';
import { appendInside, splice } from '../xml/splice.ts';
import { escapeXml } from '../xml/text.ts';
import { customFormats, styleList } from './collection.ts';
import { existingFont, fontMarkup, plainFont } from './font.ts';
import { alignment, lineBelow, pattern, shadeFormat, solid, type ShadeStyle } from './markup.ts';
import { builtInFormat, firstCustomId } from './numberFormat.ts';

/** The numbers under which a workbook knows the looks that were added to it. */
export interface StyleNumbers {
  /** Cell format of a style; `quoted` is the one for text that would otherwise read as a formula or a number. */
  cell(style: CellStyle, quoted: boolean): number;
  /** Format of a shade. */
  shade(style: ShadeStyle): number;
  /** The style sheet with the additions, once every number has been asked for. */
  text(): string;
}

/** Spreadsheet programs hold this many cell formats in a workbook (common practice, no source). */
const greatestFormatCount = 64_000;

/**
 * Adds looks to a style sheet as they are asked for; entries that stand in it keep their numbers. What a style
 * leaves open is taken from the workbook's first cell format, its default. `text` throws FileRefused where the
 * workbook is full.
 */
export function appendStyles(original: string, part: string): StyleNumbers {
  const text = opened(original, part);
  const root = outline(text, part);
  const p = root.prefix;
  const defaults = child(root, 'cellXfs')?.children[0];
  const baseFont = existingFont(text, root, numberOf(defaults, 'fontId')) ?? plainFont(p);

  const formats = styleList(text, root, 'numFmts');
  const fonts = styleList(text, root, 'fonts', [fontMarkup(p, plainFont(p), {})]);
  const fills = styleList(
    text,
    root,
    'fills',
    ['none', 'gray125'].map((type) => pattern(p, type)),
  );
  const borders = styleList(text, root, 'borders', [`<${p}border/>`]);
  const cells = styleList(text, root, 'cellXfs', [
    `<${p}xf numFmtId="0" fontId="0" fillId="0" borderId="0"/>`,
  ]);
  const shades = styleList(text, root, 'dxfs');
  const formatIds = new Map(customFormats(root));
  const named = child(root, 'cellStyleXfs') ? ` xfId="${numberOf(defaults, 'xfId')}"` : '';

  const formatId = (code: string): number => {
    const known = builtInFormat(code) ?? formatIds.get(code);
    if (known !== undefined) return known;
    const id = Math.max(firstCustomId - 1, ...formatIds.values()) + 1;
    formatIds.set(code, id);
    formats.index(`<${p}numFmt numFmtId="${id}" formatCode="${escapeXml(code)}"/>`);
    return id;
  };
  const fontId = (style: CellStyle): number => {
    const changed = [style.bold, style.italic, style.size, style.color].some((value) => value !== undefined);
    return changed ? fonts.index(fontMarkup(p, baseFont, style)) : numberOf(defaults, 'fontId');
  };

  return {
    cell(style, quoted) {
      const format =
        style.numberFormat === undefined ? numberOf(defaults, 'numFmtId') : formatId(style.numberFormat);
      const fill =
        style.fill === undefined ? numberOf(defaults, 'fillId') : fills.index(solid(p, style.fill));
      const border = style.underline ? borders.index(lineBelow(p)) : numberOf(defaults, 'borderId');
      const aligned = alignment(p, style);
      const attributes = `numFmtId="${format}" fontId="${fontId(style)}" fillId="${fill}" borderId="${border}"${named}`;
      const applied = `${quoted ? ' quotePrefix="1"' : ''} applyNumberFormat="1" applyFont="1" applyFill="1" applyBorder="1"`;
      return cells.index(
        aligned === ''
          ? `<${p}xf ${attributes}${applied}/>`
          : `<${p}xf ${attributes}${applied} applyAlignment="1">${aligned}</${p}xf>`,
      );
    },
    shade: (style) => shades.index(shadeFormat(p, style)),
    text() {
      if (cells.size() > greatestFormatCount) {
        throw new FileRefused(
          `The workbook holds ${cells.size()} cell formats, more than spreadsheet programs open. Remove unused cell styles and try again.`,
        );
      }
      return splice(
        text,
        [formats, fonts, fills, borders, cells, shades].flatMap((list) => list.edits()),
      );
    },
  };
}

/** A style sheet that closes itself holds no place to add to. */
function opened(text: string, part: string): string {
  const root = outline(text, part);
  return root.selfClosing ? splice(text, [appendInside(text, root, '')]) : text;
}

function numberOf(element: Element | undefined, name: string): number {
  return (element && Number(attribute(element, name))) || 0;
}
