import {
  BooleanNumber,
  HorizontalAlign,
  type IStyleData,
  type ITextDecoration,
  VerticalAlign,
  WrapStrategy,
} from '@univerjs/core';
import type { ViewStyle } from '../../hosts/file/view/types.ts';

const across = { left: HorizontalAlign.LEFT, center: HorizontalAlign.CENTER, right: HorizontalAlign.RIGHT };
const down = { top: VerticalAlign.TOP, center: VerticalAlign.MIDDLE, bottom: VerticalAlign.BOTTOM };
const yes = BooleanNumber.TRUE;
const line: ITextDecoration = { s: yes };

/** A look of the file as the grid stores it. */
export function gridStyle(style: ViewStyle): IStyleData {
  const { numberFormat, font, size, color, fill, align, valign = 'bottom' } = style;
  return {
    ff: font,
    fs: size,
    vt: down[valign],
    ...(numberFormat !== 'General' && { n: { pattern: numberFormat } }),
    ...(style.bold && { bl: yes }),
    ...(style.italic && { it: yes }),
    ...(style.underline && { ul: line }),
    ...(style.strike && { st: line }),
    ...(color !== undefined && { cl: { rgb: `#${color}` } }),
    ...(fill !== undefined && { bg: { rgb: `#${fill}` } }),
    ...(align !== undefined && { ht: across[align] }),
    ...(style.wrap && { tb: WrapStrategy.WRAP }),
  };
}
