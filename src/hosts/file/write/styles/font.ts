import type { CellStyle } from '../../../../sheets/model.ts';
import type { StyleSheet } from './styleSheet.ts';

/** Children of a font in the order spreadsheet programs write and expect them (CT_Font). */
const order = [
  'b',
  'i',
  'strike',
  'condense',
  'extend',
  'outline',
  'shadow',
  'u',
  'vertAlign',
  'sz',
  'color',
  'name',
  'family',
  'charset',
  'scheme',
];

/** The properties of a font by element name, each as its markup. */
export type FontProperties = ReadonlyMap<string, string>;

/** A plain font for workbooks that define none. */
export function plainFont(prefix: string): FontProperties {
  return new Map([
    ['sz', `<${prefix}sz val="11"/>`],
    ['name', `<${prefix}name val="Calibri"/>`],
    ['family', `<${prefix}family val="2"/>`],
  ]);
}

/** The font of that index in the workbook's own style sheet. */
export function existingFont(sheet: StyleSheet, index: number): FontProperties | undefined {
  const font = sheet.entry('fonts', index);
  if (!font) return undefined;
  return new Map(font.element.children.map((part) => [part.local, font.text.slice(part.start, part.end)]));
}

/** Markup of a font like `base` but for what the style says. Sizes in points. */
export function fontMarkup(prefix: string, base: FontProperties, style: CellStyle): string {
  const properties = new Map(base);
  if (style.bold !== undefined) properties.set('b', `<${prefix}b val="${Number(style.bold)}"/>`);
  if (style.italic !== undefined) properties.set('i', `<${prefix}i val="${Number(style.italic)}"/>`);
  if (style.size !== undefined) properties.set('sz', `<${prefix}sz val="${style.size}"/>`);
  if (style.color !== undefined) properties.set('color', `<${prefix}color rgb="${opaque(style.color)}"/>`);
  if (style.linked) properties.set('u', `<${prefix}u/>`);
  const known = order.map((name) => properties.get(name) ?? '');
  return `<${prefix}font>${known.join('')}</${prefix}font>`;
}

/** `RRGGBB` as the format writes an opaque colour. Throws a RangeError for anything else. */
export function opaque(color: string): string {
  if (!/^[0-9A-Fa-f]{6}$/.test(color)) throw new RangeError(`colour "${color}" is not of the form RRGGBB`);
  return `FF${color.toUpperCase()}`;
}
