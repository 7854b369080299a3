import type { Attributes } from '../read/branches.ts';
import { builtInCode } from '../../formats/builtInFormats.ts';
import { isEntry } from '../read/styles.ts';
import { booleanAttribute, readXml, type XmlHandler } from '../read/xml.ts';
import type { Archive, ZipEntry } from '../zip/archive.ts';
import type { ReadLimits } from '../zip/limits.ts';
import { colourOf, type Palette, standardColours } from './colours.ts';
import type { ViewShade, ViewStyle } from './types.ts';

type Changing<T> = { -readonly [Key in keyof T]: T[Key] };
type Font = Changing<Omit<ViewStyle, 'numberFormat' | 'fill' | 'align' | 'valign' | 'wrap'>>;
type Alignment = Changing<Pick<ViewStyle, 'align' | 'valign' | 'wrap'>>;
interface Format {
  readonly numberFormat: number;
  readonly font: number;
  readonly fill: number;
  readonly alignment: Alignment;
}

const plainFont: Font = { font: 'Calibri', size: 11 };
const plainStyle: ViewStyle = { numberFormat: 'General', ...plainFont };

/** The looks of a workbook (ECMA-376 part 1, section 18.8), by their numbers. */
export interface ViewStyles {
  /** Of cells; at least one. */
  readonly styles: readonly ViewStyle[];
  /** Of rules. */
  readonly shades: readonly ViewShade[];
}

/** Reads the looks of a workbook. Throws FileRefused where the part is broken. */
export function readViewStyles(
  archive: Archive,
  part: ZipEntry | undefined,
  theme: readonly string[],
  limits: ReadLimits,
): ViewStyles {
  if (part === undefined) return { styles: [plainStyle], shades: [] };
  // The workbook's own numbered colours stand behind the fonts and fills that use them.
  const indexed: string[] = [];
  readXml(archive, part, limits, {
    open(name, { rgb }, parents) {
      if (name === 'rgbColor' && parents.at(-1) === 'indexedColors' && rgb) indexed.push(rgb.slice(-6));
    },
  });
  const sheet = new StylePart({ theme, indexed: standardColours.map((rgb, index) => indexed[index] ?? rgb) });
  readXml(archive, part, limits, sheet);
  return { styles: sheet.styles(), shades: sheet.shades };
}

class StylePart implements XmlHandler {
  readonly #codes = new Map<number, string>();
  readonly #fonts: Font[] = [];
  readonly #fills: (string | undefined)[] = [];
  readonly #formats: Format[] = [];
  readonly shades: Changing<ViewShade>[] = [];
  #solid = false;

  constructor(readonly palette: Palette) {}

  open(name: string, attributes: Attributes, parents: readonly string[]): void {
    const parent = parents.at(-1);
    if (parents[1] === 'numFmts') {
      if (isEntry('numFmts', name, parents))
        this.#codes.set(Number(attributes['numFmtId']), attributes['formatCode'] ?? '');
    } else if (parents[1] === 'fonts') {
      const font = this.#fonts.at(-1);
      if (parent === 'font' && font !== undefined) this.#addToFont(font, name, attributes);
    } else if (parents[1] === 'fills') {
      if (name === 'patternFill') this.#solid = attributes['patternType'] === 'solid';
      else if (name === 'fgColor' && this.#solid && parent === 'patternFill') {
        this.#fills[this.#fills.length - 1] = colourOf(attributes, this.palette);
      }
    } else if (parents[1] === 'dxfs') {
      const shade = this.shades.at(-1);
      if (shade !== undefined) this.#addToShade(shade, name, parent, attributes);
    } else if (parents[1] === 'cellXfs') {
      const format = this.#formats.at(-1);
      if (name === 'alignment' && format !== undefined)
        Object.assign(format.alignment, alignmentOf(attributes));
    }
    if (parents.length === 2) this.#start(name, parents, attributes);
  }

  /** Styles that look alike are one object: large style sheets repeat themselves. */
  styles(): readonly ViewStyle[] {
    const alike = new Map<string, ViewStyle>();
    const styles = this.#formats.map(({ numberFormat, font, fill, alignment }): ViewStyle => {
      const colour = this.#fills[fill];
      const style: ViewStyle = {
        numberFormat: this.#codes.get(numberFormat) ?? builtInCode(numberFormat),
        ...(this.#fonts[font] ?? plainFont),
        ...(colour === undefined ? {} : { fill: colour }),
        ...alignment,
      };
      const key = JSON.stringify(style);
      const known = alike.get(key) ?? style;
      alike.set(key, known);
      return known;
    });
    return styles.length > 0 ? styles : [plainStyle];
  }

  #start(name: string, parents: readonly string[], attributes: Attributes): void {
    if (isEntry('fonts', name, parents)) this.#fonts.push({ ...plainFont });
    else if (isEntry('fills', name, parents)) {
      this.#fills.push(undefined);
      this.#solid = false;
    } else if (isEntry('dxfs', name, parents)) this.shades.push({});
    else if (isEntry('cellXfs', name, parents)) {
      const number = (key: string): number => Number(attributes[key] ?? 0);
      this.#formats.push({
        numberFormat: number('numFmtId'),
        font: number('fontId'),
        fill: number('fillId'),
        alignment: {},
      });
    }
  }

  /** The colour behind a pattern is that of a rule's plain fill (common practice of spreadsheet programs, no source). */
  #addToShade(
    shade: Changing<ViewShade>,
    name: string,
    parent: string | undefined,
    attributes: Attributes,
  ): void {
    if (parent === 'font') this.#addToFont(shade, name, attributes);
    else if (parent === 'patternFill' && name === 'bgColor') {
      const fill = colourOf(attributes, this.palette);
      if (fill !== undefined) shade.fill = fill;
    }
  }

  #addToFont(font: Partial<Font>, name: string, attributes: Attributes): void {
    const on = booleanAttribute(attributes['val']) !== false && attributes['val'] !== 'none';
    const size = Number(attributes['val']);
    if (name === 'b' && on) font.bold = true;
    else if (name === 'i' && on) font.italic = true;
    else if (name === 'u' && on) font.underline = true;
    else if (name === 'strike' && on) font.strike = true;
    else if (name === 'sz' && size >= 1 && size <= 409) font.size = size;
    else if (name === 'name' && attributes['val']) font.font = attributes['val'];
    else if (name === 'color') {
      const color = colourOf(attributes, this.palette);
      if (color !== undefined) font.color = color;
    }
  }
}

function alignmentOf({ horizontal, vertical, wrapText }: Attributes): Alignment {
  const alignment: Alignment = {};
  if (horizontal === 'left' || horizontal === 'center' || horizontal === 'right')
    alignment.align = horizontal;
  else if (horizontal === 'centerContinuous') alignment.align = 'center';
  if (vertical === 'top' || vertical === 'center' || vertical === 'bottom') alignment.valign = vertical;
  if (booleanAttribute(wrapText) === true) alignment.wrap = true;
  return alignment;
}
