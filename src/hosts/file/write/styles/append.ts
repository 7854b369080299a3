import type { CellStyle } from '../../../../sheets/model.ts';
import { FileRefused } from '../../zip/refused.ts';
import { attribute, type Element } from '../xml/outline.ts';
import { splice } from '../xml/splice.ts';
import { styleList } from './collection.ts';
import { existingFont, fontMarkup, plainFont } from './font.ts';
import { alignment, lineBelow, pattern, shadeFormat, solid, type ShadeStyle } from './markup.ts';
import { formatIds } from './formatIds.ts';
import { listedStyles } from './listedStyles.ts';
import { greatestFormatCount } from './namedStyles.ts';
import { styleSheet, type StyleSheet } from './styleSheet.ts';

/** The numbers under which a workbook knows the looks that were added to it. */
export interface StyleNumbers {
  /** Whether cells that name no format show numbers as they are; else those need a format of their own. */
  readonly isPlain: boolean;
  /** Cell format of a style; `quoted` is the one for text that would otherwise read as a formula or a number. */
  cell(style: CellStyle, quoted: boolean): number;
  /** Format of a shade. */
  shade(style: ShadeStyle): number;
  /** The style sheet with the additions, once every number has been asked for. */
  text(): string;
}

/**
 * Adds looks to a style sheet as they are asked for; entries that stand in it keep their numbers. What a style
 * leaves open is taken from the workbook's first cell format, its default, but that numbers are shown as they are. `text` throws FileRefused where the
 * workbook is full.
 */
export function appendStyles(original: string, part: string): StyleNumbers {
  const sheet = opened(styleSheet(original, part), part);
  const { text, prefix: p } = sheet;
  const defaults = sheet.entry('cellXfs', 0)?.element;
  const baseFont = existingFont(sheet, numberOf(defaults, 'fontId')) ?? plainFont(p);

  const formats = formatIds(sheet);
  const fonts = styleList(sheet, 'fonts', [fontMarkup(p, plainFont(p), {})]);
  const fills = styleList(
    sheet,
    'fills',
    ['none', 'gray125'].map((type) => pattern(p, type)),
  );
  const borders = styleList(sheet, 'borders', [`<${p}border/>`]);
  const cells = styleList(sheet, 'cellXfs', [`<${p}xf numFmtId="0" fontId="0" fillId="0" borderId="0"/>`]);
  const shades = styleList(sheet, 'dxfs');
  const base = sheet.list('cellStyleXfs') ? ` xfId="${numberOf(defaults, 'xfId')}"` : '';
  const isGeneral = formats.isGeneral(numberOf(defaults, 'numFmtId'));

  const fontId = (style: CellStyle): number => {
    const changed = [style.bold, style.italic, style.size, style.color, style.linked].some(
      (value) => value !== undefined,
    );
    return changed ? fonts.index(fontMarkup(p, baseFont, style)) : numberOf(defaults, 'fontId');
  };

  const listed = listedStyles(sheet);

  return {
    isPlain: isGeneral,
    cell(style, quoted) {
      const format =
        style.numberFormat === undefined && isGeneral
          ? numberOf(defaults, 'numFmtId')
          : formats.idOf(style.numberFormat ?? 'General');
      const fill =
        style.fill === undefined ? numberOf(defaults, 'fillId') : fills.index(solid(p, style.fill));
      const border = style.underline ? borders.index(lineBelow(p)) : numberOf(defaults, 'borderId');
      const aligned = alignment(p, style);
      if (style.named !== undefined) {
        const own = { numFmtId: format, fontId: fontId(style), fillId: fill, borderId: border };
        return cells.index(listed.cell({ ...style, named: style.named }, own, aligned, quoted));
      }
      const attributes = `numFmtId="${format}" fontId="${fontId(style)}" fillId="${fill}" borderId="${border}"${base}`;
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
      const named = listed.lists();
      return splice(
        text,
        [formats.list, fonts, fills, borders, ...named.formats, cells, ...named.names, shades].flatMap(
          (list) => list.edits(),
        ),
      );
    },
  };
}

/** A style sheet that closes itself holds no place to add to. */
function opened(sheet: StyleSheet, part: string): StyleSheet {
  const { root, text } = sheet;
  if (!root.selfClosing) return sheet;
  const slash = text.lastIndexOf('/', root.openEnd - 1);
  return styleSheet(`${text.slice(0, slash)}></${root.name}>${text.slice(root.openEnd)}`, part);
}

function numberOf(element: Element | undefined, name: string): number {
  return (element && Number(attribute(element, name))) || 0;
}
