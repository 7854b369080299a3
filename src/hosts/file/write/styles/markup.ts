import type { CellStyle, ShadeRule } from '../../../../sheets/model.ts';
import { opaque } from './font.ts';

export type ShadeStyle = ShadeRule['style'];

/** A fill of one of the two patterns that come first in every workbook: `none`, `gray125`. */
export function pattern(p: string, type: string): string {
  return `<${p}fill><${p}patternFill patternType="${type}"/></${p}fill>`;
}

/** A cell's fill in one colour (`RRGGBB`). */
export function solid(p: string, color: string): string {
  return `<${p}fill><${p}patternFill patternType="solid"><${p}fgColor rgb="${opaque(color)}"/><${p}bgColor indexed="64"/></${p}patternFill></${p}fill>`;
}

/** A border that is a thin line below the cell. */
export function lineBelow(p: string): string {
  return `<${p}border><${p}left/><${p}right/><${p}top/><${p}bottom style="thin"><${p}color auto="1"/></${p}bottom><${p}diagonal/></${p}border>`;
}

/** A cell's alignment, empty where the style says nothing of it. */
export function alignment(p: string, { wrap, align, valign }: CellStyle): string {
  const attributes = [
    align === undefined ? '' : ` horizontal="${align}"`,
    valign === undefined ? '' : ` vertical="${valign}"`,
    wrap === undefined ? '' : ` wrapText="${Number(wrap)}"`,
  ].join('');
  return attributes === '' ? '' : `<${p}alignment${attributes}/>`;
}

/** The difference a shade makes to a cell (CT_Dxf). Programs differ in which of the two colours of a solid fill they show, so both are set. */
export function shadeFormat(p: string, { fill, color, bold }: ShadeStyle): string {
  const font = [
    bold === undefined ? '' : `<${p}b val="${Number(bold)}"/>`,
    color === undefined ? '' : `<${p}color rgb="${opaque(color)}"/>`,
  ].join('');
  const filled =
    fill === undefined
      ? ''
      : `<${p}fill><${p}patternFill patternType="solid"><${p}fgColor rgb="${opaque(fill)}"/><${p}bgColor rgb="${opaque(fill)}"/></${p}patternFill></${p}fill>`;
  return `<${p}dxf>${font === '' ? '' : `<${p}font>${font}</${p}font>`}${filled}</${p}dxf>`;
}
