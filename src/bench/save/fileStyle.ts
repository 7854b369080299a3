import {
  BooleanNumber,
  HorizontalAlign,
  type IStyleData,
  type Nullable,
  VerticalAlign,
  WrapStrategy,
} from '@univerjs/core';
import type { CellStyle } from '../../sheets/model.ts';

const across: Readonly<Partial<Record<HorizontalAlign, 'left' | 'center' | 'right'>>> = {
  [HorizontalAlign.LEFT]: 'left',
  [HorizontalAlign.CENTER]: 'center',
  [HorizontalAlign.RIGHT]: 'right',
};
const down: Readonly<Partial<Record<VerticalAlign, 'top' | 'center'>>> = {
  [VerticalAlign.TOP]: 'top',
  [VerticalAlign.MIDDLE]: 'center',
};

/** A look of the grid as a file stores it, as far as result sheets have looks; `undefined` for the default. */
export function fileStyle(look: IStyleData | undefined): CellStyle | undefined {
  if (!look) return undefined;
  const color = hexOf(look.cl?.rgb);
  const fill = hexOf(look.bg?.rgb);
  const align = look.ht ? across[look.ht] : undefined;
  const valign = look.vt ? down[look.vt] : undefined;
  const style: CellStyle = {
    ...(look.bl === BooleanNumber.TRUE && { bold: true }),
    ...(look.it === BooleanNumber.TRUE && { italic: true }),
    ...(look.fs !== undefined && look.fs !== 11 && { size: look.fs }),
    ...(color !== undefined && { color }),
    ...(fill !== undefined && { fill }),
    ...(look.n?.pattern !== undefined && { numberFormat: look.n.pattern }),
    ...(look.tb === WrapStrategy.WRAP && { wrap: true }),
    ...(align && { align }),
    ...(valign && { valign }),
  };
  return Object.keys(style).length === 0 ? undefined : style;
}

/** The side a cell's content stands at; `null` where its kind decides, `undefined` where files of ours have no word for it. */
export function acrossOf({ ht: side }: IStyleData): 'left' | 'center' | 'right' | null | undefined {
  return side ? across[side] : null;
}

/** The height a cell's content stands at; `undefined` where files of ours have no word for it. */
export function downOf({ vt: side }: IStyleData): 'top' | 'center' | 'bottom' | undefined {
  return side && side !== VerticalAlign.BOTTOM ? down[side] : 'bottom';
}

/** `RRGGBB` of a colour the grid stores as `#rrggbb` or `rgb(r, g, b)`. */
export function hexOf(color: Nullable<string>): string | undefined {
  const hex = /^#([0-9a-f]{6})$/i.exec(color ? color : '')?.[1];
  if (hex !== undefined) return hex.toUpperCase();
  const parts = /^rgba?\((\d+),\s*(\d+),\s*(\d+)/i.exec(color ? color : '')?.slice(1, 4);
  return parts
    ?.map((part) => Number(part).toString(16).padStart(2, '0'))
    .join('')
    .toUpperCase();
}
