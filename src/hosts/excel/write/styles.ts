import type { CellStyle } from '../../../sheets/model.ts';
import { kindOfCode } from '../../formats/numberFormat.ts';

/** A style of a model, taken apart into what Excel sets by different calls. */
export interface PreparedStyle {
  /** The same for styles that differ in number format and underline alone; empty where there is nothing to set. */
  readonly lookKey: string;
  readonly look: CellStyle;
  readonly underline: boolean;
  readonly numberFormat: string | undefined;
  readonly isDate: boolean;
}

/** The styles of a model by name, and under `''` the one of cells without a style. */
export function preparedStyles(
  styles: Readonly<Record<string, CellStyle>>,
): ReadonlyMap<string, PreparedStyle> {
  return new Map([
    ['', prepared({})],
    ...Object.entries(styles).map(([name, style]) => [name, prepared(style)] as const),
  ]);
}

function prepared(style: CellStyle): PreparedStyle {
  const { numberFormat, underline = false, ...rest } = style;
  const look: CellStyle = Object.fromEntries(Object.entries(rest).filter(([part]) => part !== 'named'));
  const styleKey = JSON.stringify(Object.entries(look).toSorted());
  return {
    lookKey: styleKey === '[]' ? '' : styleKey,
    look,
    underline,
    numberFormat,
    isDate: kindOfCode(numberFormat ?? '') === 'date',
  };
}

const horizontal = { left: 'Left', center: 'Center', right: 'Right' } as const;
const vertical = { top: 'Top', center: 'Center' } as const;

/** Sets what a look says; the rest stays as it is. */
export function setStyle(format: Excel.RangeFormat, look: CellStyle): void {
  const { bold, italic, linked, size, color, fill, wrap, align, valign } = look;
  if (bold !== undefined) format.font.bold = bold;
  if (italic !== undefined) format.font.italic = italic;
  if (linked !== undefined) format.font.underline = linked ? 'Single' : 'None';
  if (size !== undefined) format.font.size = size;
  if (color !== undefined) format.font.color = `#${color}`;
  if (fill !== undefined) format.fill.color = `#${fill}`;
  if (wrap !== undefined) format.wrapText = wrap;
  if (align !== undefined) format.horizontalAlignment = horizontal[align];
  if (valign !== undefined) format.verticalAlignment = vertical[valign];
}
