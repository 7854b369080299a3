import type { CellStyle, SheetModel } from '../../../../sheets/model.ts';
import { kindOfCode } from '../../../formats/numberFormat.ts';
import { daysTo1904 } from '../../../formats/dates.ts';
import type { CellStyling } from '../sheet/rows.ts';
import { utf8 } from '../sheet/stream.ts';
import type { StyleNumbers } from './append.ts';

/** The looks of a sheet's styles by name, and under `''` the workbook's default. */
export function stylesByName(
  sheet: SheetModel,
  numbers: StyleNumbers,
  from1904: boolean,
): ReadonlyMap<string, CellStyling> {
  const marked = (style: CellStyle, quoted: boolean): Uint8Array =>
    utf8(`" s="${numbers.cell(style, quoted)}"`);
  const look = (style: CellStyle): CellStyling => ({
    plain: marked(style, false),
    quoted: marked(style, true),
    daysLess: from1904 && kindOfCode(style.numberFormat ?? '') === 'date' ? daysTo1904 : 0,
  });
  const named = Object.entries(sheet.styles).map(([name, style]): [string, CellStyling] => [
    name,
    look(style),
  ]);
  const plain = look({});
  return new Map([['', numbers.isPlain ? { ...plain, plain: utf8('"') } : plain], ...named]);
}
