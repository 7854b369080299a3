import {
  BooleanNumber,
  BorderStyleTypes,
  HorizontalAlign,
  type IStyleData,
  VerticalAlign,
  WrapStrategy,
} from '@univerjs/core';
import type { CellStyle } from '../../../sheets/model.ts';

const across = { left: HorizontalAlign.LEFT, center: HorizontalAlign.CENTER, right: HorizontalAlign.RIGHT };
const down = { top: VerticalAlign.TOP, center: VerticalAlign.MIDDLE };
const yes = BooleanNumber.TRUE;

/** A look as the grid stores it; sizes in points. */
export function gridLook(style: CellStyle): IStyleData {
  const { bold, italic, size, color, fill, numberFormat, wrap, align, valign, underline } = style;
  return {
    ...(bold === true && { bl: yes }),
    ...(italic === true && { it: yes }),
    ...(size !== undefined && { fs: size }),
    ...(color !== undefined && { cl: { rgb: `#${color}` } }),
    ...(fill !== undefined && { bg: { rgb: `#${fill}` } }),
    ...(numberFormat !== undefined && numberFormat !== 'General' && { n: { pattern: numberFormat } }),
    ...(wrap === true && { tb: WrapStrategy.WRAP }),
    ...(align !== undefined && { ht: across[align] }),
    vt: valign === undefined ? VerticalAlign.BOTTOM : down[valign],
    ...(underline === true && { bd: { b: { s: BorderStyleTypes.THIN, cl: { rgb: '#5B6770' } } } }),
  };
}
